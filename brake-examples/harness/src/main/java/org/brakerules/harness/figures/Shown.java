package org.brakerules.harness.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;

/** Rounds estimates for a drawing: a model of the brake is not better than that. */
final class Shown {

  private static final long NANOMETRES_PER_THOUSANDTH_INCH = 25_400;
  private static final long NANOMETRES_PER_HUNDREDTH_MILLIMETRE = 10_000;

  private Shown() {}

  static String estimate(Length length) {
    long step =
        length.unit() == LengthUnit.INCH
            ? NANOMETRES_PER_THOUSANDTH_INCH
            : NANOMETRES_PER_HUNDREDTH_MILLIMETRE;
    long steps =
        BigDecimal.valueOf(length.nanometres())
            .divide(BigDecimal.valueOf(step), 0, RoundingMode.HALF_EVEN)
            .longValueExact();
    return "about " + new Length(steps * step, length.unit());
  }
}
