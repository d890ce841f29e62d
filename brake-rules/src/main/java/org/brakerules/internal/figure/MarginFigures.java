package org.brakerules.internal.figure;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.brakerules.calc.Working;
import org.brakerules.calc.trust.ReadingAgainstLimit;
import org.brakerules.figure.Figure;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Reading;

/** How far each reading is from each limit it was held against. */
final class MarginFigures {

  private MarginFigures() {}

  static List<Figure> of(Bench bench) {
    return judged(bench).map(MarginFigures::figure).toList();
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

  private static Figure figure(Check check) {
    return new Figure(
        check.part().toString(),
        margin(check, check.reading().orElseThrow(), check.limit().orElseThrow()));
  }

  /** A reading and its limit are of one kind of quantity, or they would not have met. */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Working margin(
      Check check, Reading<?> reading, LimitInForce limit) {
    return ReadingAgainstLimit.of(
            inWords(check.property()),
            (Reading<Q>) reading,
            limit.comparison(),
            (Q) limit.value(),
            limit.source())
        .working();
  }

  /** The property {@code appliedStroke} as "applied stroke". */
  private static String inWords(String property) {
    return property.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }
}
