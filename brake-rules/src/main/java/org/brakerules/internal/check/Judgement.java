package org.brakerules.internal.check;

import java.util.Optional;
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
   * Judges a reading. A reading with a stated uncertainty is within only if it passes with the
   * uncertainty against it, and beyond only if it fails with the uncertainty in its favour: the
   * guarded acceptance of ISO 14253-1 and ILAC-G8.
   */
  static <Q extends Quantity<Q>> Judgement<Q> of(
      Reading<Q> reading, Comparison comparison, Q limit) {
    Q margin = reading.value().minus(limit).abs();
    boolean passesAtWorst = comparison.passes(shifted(reading, comparison.isUpper()), limit);
    boolean passesAtBest = comparison.passes(shifted(reading, !comparison.isUpper()), limit);
    if (passesAtWorst) {
      return new Judgement<>(CheckStatus.WITHIN, margin);
    }
    return new Judgement<>(passesAtBest ? CheckStatus.UNPROVEN : CheckStatus.BEYOND, margin);
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

  private static <Q extends Quantity<Q>> Q shifted(Reading<Q> reading, boolean up) {
    Optional<Q> uncertainty = reading.uncertainty();
    if (uncertainty.isEmpty()) {
      return reading.value();
    }
    return up ? reading.value().plus(uncertainty.get()) : reading.value().minus(uncertainty.get());
  }
}
