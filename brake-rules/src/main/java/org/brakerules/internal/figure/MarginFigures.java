package org.brakerules.internal.figure;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.calc.Working;
import org.brakerules.calc.trust.ReadingAgainstLimit;
import org.brakerules.figure.Figure;
import org.brakerules.internal.table.Property;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Reading;

/** How far each reading is from each limit it was held against. */
final class MarginFigures {

  private MarginFigures() {}

  static List<Figure> of(Bench bench) {
    return judged(bench).map(check -> figure(bench, check)).toList();
  }

  /** The checks in which a reading met a limit. */
  static Stream<Check> judged(Bench bench) {
    return bench
        .checks()
        .filter(
            check ->
                check.status() == CheckStatus.WITHIN
                    || check.status() == CheckStatus.BEYOND
                    || check.status() == CheckStatus.UNPROVEN);
  }

  private static Figure figure(Bench bench, Check check) {
    Reading<?> reading = check.reading().orElseThrow();
    Working working = margin(check, reading, check.limit().orElseThrow());
    return new Figure(
        check.part().toString(),
        reading.uncertainty().isEmpty() || isStated(bench, check, reading)
            ? working
            : working.assumed("uncertainty of the reading", "that of the instrument's table"));
  }

  /** Whether a part has the reading with this very uncertainty. */
  private static boolean isStated(Bench bench, Check check, Reading<?> reading) {
    Property property = Property.of(check.part().kind(), check.property()).orElseThrow();
    return bench.parts().stream()
        .filter(part -> part.part().place().equals(check.part()))
        .map(part -> (Measurement<?>) property.valueOf(part.part()))
        .anyMatch(measurement -> measurement.readings().contains(reading));
  }

  /** A reading and its limit are of one kind of quantity, or they would not have met. */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Working margin(
      Check check, Reading<?> reading, LimitInForce limit) {
    return ReadingAgainstLimit.of(
            check.propertyInWords(),
            (Reading<Q>) reading,
            limit.comparison(),
            (Q) limit.value(),
            limit.source())
        .working();
  }
}
