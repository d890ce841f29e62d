package org.brakerules.internal.check;

import org.brakerules.calc.trust.ReadingAgainstLimit;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Reading;

/**
 * One reading held against one value.
 *
 * @param status within, beyond or unproven
 * @param margin how far from the value the reading is, never negative
 */
record Judgement<Q extends Quantity<Q>>(CheckStatus status, Q margin) {

  /**
   * Judges a reading by guarded acceptance where its uncertainty is stated, see {@link
   * ReadingAgainstLimit}.
   */
  static <Q extends Quantity<Q>> Judgement<Q> of(
      Reading<Q> reading, Comparison comparison, Q limit) {
    return new Judgement<>(
        ReadingAgainstLimit.status(reading, comparison, limit), reading.value().minus(limit).abs());
  }

  /** Whether this one is the graver of two against the same limit. */
  boolean graverThan(Judgement<Q> other) {
    if (status != other.status) {
      return gravity(status) > gravity(other.status);
    }
    int order = margin.compareTo(other.margin);
    return status == CheckStatus.BEYOND ? order > 0 : order < 0;
  }

  private static int gravity(CheckStatus status) {
    return switch (status) {
      case BEYOND -> 2;
      case UNPROVEN -> 1;
      default -> 0;
    };
  }
}
