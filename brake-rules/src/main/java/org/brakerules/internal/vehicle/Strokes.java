package org.brakerules.internal.vehicle;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.decide.InspectedPart;
import org.brakerules.internal.decide.InspectedParts;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.vehicle.BrakeCount.Stroke;

/** The applied stroke of each brake of a job against its limits. */
final class Strokes {

  /** The limits of the law; the trade's own figures make no brake defective. */
  private static final String LIMIT = "chamber.applied-stroke.max";

  private final Map<WheelEndPath, List<Check>> checks;
  private final Map<WheelEndPath, Chamber> chambers;

  private Strokes(Map<WheelEndPath, List<Check>> checks, Map<WheelEndPath, Chamber> chambers) {
    this.checks = checks;
    this.chambers = chambers;
  }

  static Strokes of(BrakeJob job, Tables tables) {
    List<InspectedPart> chambers =
        InspectedParts.of(job, Checks.of(tables, job)).stream()
            .filter(part -> part.part().partKind() == PartKind.CHAMBER)
            .toList();
    return new Strokes(
        chambers.stream()
            .map(InspectedPart::checks)
            .flatMap(List::stream)
            .filter(check -> check.limitId().equals(LIMIT))
            .collect(Collectors.groupingBy(check -> check.part().wheelEnd())),
        chambers.stream()
            .map(chamber -> (Chamber) chamber.part())
            .collect(Collectors.toMap(Chamber::wheelEnd, chamber -> chamber)));
  }

  /** Beyond as soon as one limit says so; within only if every one does. */
  Stroke standing(WheelEndPath wheelEnd) {
    List<Check> all = checks.getOrDefault(wheelEnd, List.of());
    if (all.stream().anyMatch(check -> check.status() == CheckStatus.BEYOND)) {
      return Stroke.BEYOND;
    }
    return !all.isEmpty() && all.stream().allMatch(check -> check.status() == CheckStatus.WITHIN)
        ? Stroke.WITHIN
        : Stroke.OPEN;
  }

  /** How far a stroke is beyond the strictest of its limits. */
  Optional<Length> beyond(WheelEndPath wheelEnd) {
    return checks.getOrDefault(wheelEnd, List.of()).stream()
        .filter(check -> check.status() == CheckStatus.BEYOND)
        .map(check -> (Length) check.margin().orElseThrow())
        .max(Comparator.naturalOrder());
  }

  /** The stroke that met a limit; empty if none did. */
  Optional<Length> applied(WheelEndPath wheelEnd) {
    return appliedReading(wheelEnd).map(reading -> (Length) reading.value());
  }

  private Optional<? extends Reading<?>> appliedReading(WheelEndPath wheelEnd) {
    return checks.getOrDefault(wheelEnd, List.of()).stream()
        .filter(check -> check.margin().isPresent())
        .map(check -> check.reading().orElseThrow())
        .findFirst();
  }

  /** The last free stroke not read at another moment than that applied stroke; empty if none is. */
  Optional<Length> free(WheelEndPath wheelEnd) {
    return appliedReading(wheelEnd)
        .map(Reading::moment)
        .flatMap(
            moment ->
                Optional.ofNullable(chambers.get(wheelEnd)).stream()
                    .flatMap(chamber -> chamber.freeStroke().readings().stream())
                    .filter(reading -> isOneMoment(reading.moment(), moment))
                    .reduce((earlier, later) -> later))
        .map(Reading::value);
  }

  /** A moment that is not stated may be any. */
  private static boolean isOneMoment(Moment one, Moment other) {
    return one == other || one == Moment.UNKNOWN || other == Moment.UNKNOWN;
  }
}
