package org.brakerules.internal.vehicle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.internal.decide.AcrossAxle;
import org.brakerules.internal.table.Names;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.vehicle.AxleMatch;
import org.brakerules.vehicle.AxleMatch.Likeness;
import org.brakerules.vehicle.AxleStatus;

/** Holds the two ends of each axle against each other. */
final class AxleStatuses {

  private final Strokes strokes;

  AxleStatuses(Strokes strokes) {
    this.strokes = strokes;
  }

  /** One for each axle of the job, in path order. */
  List<AxleStatus> of(BrakeJob job) {
    List<AxleStatus> all = new ArrayList<>();
    for (VehicleUnit unit : job.units()) {
      for (Axle axle : unit.axles()) {
        all.add(of(unit, axle));
      }
    }
    return all.stream().sorted(Comparator.comparing(AxleStatus::left)).toList();
  }

  private AxleStatus of(VehicleUnit unit, Axle axle) {
    WheelEndPath left = new WheelEndPath(unit.name(), axle.number(), Side.LEFT);
    List<AxleMatch> matches = new ArrayList<>();
    for (AxleMatter matter : AxleMatter.values()) {
      matches.add(match(matter, stated(axle, left, matter), stated(axle, left.partner(), matter)));
    }
    return new AxleStatus(
        left,
        axle.kind(),
        matches,
        strokes.applied(left),
        strokes.applied(left.partner()),
        strokes.free(left),
        strokes.free(left.partner()));
  }

  private static AxleMatch match(
      AxleMatter matter, Optional<? extends Object> left, Optional<? extends Object> right) {
    Likeness likeness = Likeness.NOT_STATED;
    if (left.isPresent() && right.isPresent()) {
      likeness = left.equals(right) ? Likeness.ALIKE : Likeness.UNLIKE;
    }
    return new AxleMatch(matter, likeness, inWords(left), inWords(right));
  }

  private static Optional<? extends Object> stated(
      Axle axle, WheelEndPath path, AxleMatter matter) {
    return axle.wheelEnds().stream()
        .filter(end -> end.path().equals(path))
        .findFirst()
        .flatMap((WheelEnd end) -> AcrossAxle.stated(end, matter));
  }

  private static String inWords(Optional<? extends Object> stated) {
    return stated.map(AxleStatuses::inWords).orElse("");
  }

  private static String inWords(Object stated) {
    if (stated instanceof List<?> several) {
      return several.stream().map(AxleStatuses::inWords).collect(Collectors.joining(" "));
    }
    return stated instanceof Enum<?> one ? Names.of(one) : stated.toString();
  }
}
