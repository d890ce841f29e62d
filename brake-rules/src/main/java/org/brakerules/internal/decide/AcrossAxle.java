package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.brakerules.internal.fact.UnlikePartner;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.SlackAdjuster;
import org.brakerules.model.quantity.Length;

/** In what the two ends of an axle differ, of all that must be alike. */
public final class AcrossAxle {

  private AcrossAxle() {}

  /** The differences, for both ends; none if only one end is in the job. */
  static List<UnlikePartner> differences(Axle axle) {
    if (axle.wheelEnds().size() < 2) {
      return List.of();
    }
    WheelEnd one = axle.wheelEnds().get(0);
    WheelEnd other = axle.wheelEnds().get(1);
    List<UnlikePartner> differences = new ArrayList<>();
    for (AxleMatter matter : AxleMatter.values()) {
      if (differ(one, other, end -> stated(end, matter))) {
        differences.add(new UnlikePartner(matter, one.path()));
        differences.add(new UnlikePartner(matter, other.path()));
      }
    }
    return differences;
  }

  /** What is not stated of both ends differs from nothing. */
  private static boolean differ(
      WheelEnd one, WheelEnd other, Function<WheelEnd, Optional<?>> stated) {
    Optional<?> here = stated.apply(one);
    Optional<?> there = stated.apply(other);
    return here.isPresent() && there.isPresent() && !here.equals(there);
  }

  /** What one end states in a matter; empty if it states nothing. */
  public static Optional<?> stated(WheelEnd end, AxleMatter matter) {
    ChamberSize chamber = end.layout().chamber();
    return switch (matter) {
      case CHAMBER_SIZE ->
          chamber.family() == ChamberFamily.UNKNOWN || chamber.type().isEmpty()
              ? Optional.empty()
              : Optional.of(List.of(chamber.family(), chamber.type()));
      case STROKE_CLASS ->
          Optional.of(chamber.strokeClass()).filter(one -> one != StrokeClass.UNKNOWN);
      case ADJUSTER_KIND ->
          Optional.of(end.layout().adjuster()).filter(one -> one != AdjusterKind.UNKNOWN);
      case ARM_LENGTH -> armLength(end);
    };
  }

  /** Arms come in lengths far apart, so any difference of the lengths written down counts. */
  private static Optional<Length> armLength(WheelEnd end) {
    return end.parts().stream()
        .filter(SlackAdjuster.class::isInstance)
        .map(SlackAdjuster.class::cast)
        .filter(adjuster -> adjuster.presence() != Presence.NOT_FITTED)
        .sorted(Comparator.comparing(SlackAdjuster::place))
        .flatMap(adjuster -> adjuster.armLength().readings().stream())
        .map(reading -> reading.value())
        .findFirst();
  }
}
