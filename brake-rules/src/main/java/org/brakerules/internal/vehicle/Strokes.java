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
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.vehicle.BrakeCount.Stroke;

/** The applied stroke of each brake of a job against its limits. */
final class Strokes {

  /** The limits of the law; the trade's own figures make no brake defective. */
  private static final String LIMIT = "chamber.applied-stroke.max";

  private final Map<WheelEndPath, List<Check>> checks;

  private Strokes(Map<WheelEndPath, List<Check>> checks) {
    this.checks = checks;
  }

  static Strokes of(BrakeJob job, Tables tables) {
    return new Strokes(
        InspectedParts.of(job, Checks.of(tables, job)).stream()
            .filter(part -> part.part().partKind() == PartKind.CHAMBER)
            .map(InspectedPart::checks)
            .flatMap(List::stream)
            .filter(check -> check.limitId().equals(LIMIT))
            .collect(Collectors.groupingBy(check -> check.part().wheelEnd())));
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
    return checks.getOrDefault(wheelEnd, List.of()).stream()
        .filter(check -> check.margin().isPresent())
        .map(check -> (Length) check.reading().orElseThrow().value())
        .findFirst();
  }
}
