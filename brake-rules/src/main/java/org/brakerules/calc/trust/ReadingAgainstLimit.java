package org.brakerules.calc.trust;

import java.util.Optional;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Source;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Reading;

/**
 * A reading held against a limit by guarded acceptance, as in ISO 14253-1 and ILAC-G8: inside only
 * if it passes with its uncertainty against it, beyond only if it fails with its uncertainty in its
 * favour. Without an uncertainty that is simple acceptance.
 *
 * @param status within, beyond or unproven
 * @param margin how far the reading is from the limit, never negative
 * @param working how it was worked out
 */
public record ReadingAgainstLimit<Q extends Quantity<Q>>(
    CheckStatus status, Q margin, Working working) {

  /**
   * Holds a reading against a limit.
   *
   * @param name what was read, such as {@code applied stroke}
   * @param reading the reading; without an uncertainty it is held by simple acceptance
   * @param comparison the side of the limit on which a reading passes
   * @param limit the limit
   * @param source where the limit comes from
   */
  public static <Q extends Quantity<Q>> ReadingAgainstLimit<Q> of(
      String name, Reading<Q> reading, Comparison comparison, Q limit, Source source) {
    CheckStatus status = status(reading, comparison, limit);
    Working working =
        uncertain(
            margin(name, reading, comparison, limit, Basis.of(source)), name, reading, comparison);
    return new ReadingAgainstLimit<>(
        status,
        reading.value().minus(limit).abs(),
        working.result("the reading is", inWords(status)));
  }

  /** How a reading stands: within, beyond or unproven. */
  public static <Q extends Quantity<Q>> CheckStatus status(
      Reading<Q> reading, Comparison comparison, Q limit) {
    if (comparison.passes(shifted(reading, comparison.isUpper()), limit)) {
      return CheckStatus.WITHIN;
    }
    return comparison.passes(shifted(reading, !comparison.isUpper()), limit)
        ? CheckStatus.UNPROVEN
        : CheckStatus.BEYOND;
  }

  private static <Q extends Quantity<Q>> Q shifted(Reading<Q> reading, boolean up) {
    Q value = reading.value();
    Optional<Q> uncertainty = reading.uncertainty();
    if (uncertainty.isEmpty()) {
      return value;
    }
    return up ? value.plus(uncertainty.get()) : value.minus(uncertainty.get());
  }

  private static <Q extends Quantity<Q>> Working margin(
      String name, Reading<Q> reading, Comparison comparison, Q limit, Basis basis) {
    boolean upper = comparison.isUpper();
    Q from = upper ? limit : reading.value();
    Q less = upper ? reading.value() : limit;
    Q margin = from.minus(less);
    return Working.of(
            "margin",
            "Margin of the " + name,
            upper ? "margin = limit - reading" : "margin = reading - limit",
            basis)
        .given(name, reading.written())
        .given("limit", comparison.inWords() + " " + limit)
        .step(from + " - " + less + " = " + margin)
        .result("margin", margin);
  }

  private static <Q extends Quantity<Q>> Working uncertain(
      Working working, String name, Reading<Q> reading, Comparison comparison) {
    return reading.uncertainty().isEmpty()
        ? working
        : working
            .given("uncertainty of the reading", reading.uncertainty().get())
            .step("at its worst the " + name + " is " + shifted(reading, comparison.isUpper()));
  }

  private static String inWords(CheckStatus status) {
    return switch (status) {
      case WITHIN -> "inside the limit";
      case BEYOND -> "beyond the limit";
      default -> "too close to the limit for its uncertainty";
    };
  }
}
