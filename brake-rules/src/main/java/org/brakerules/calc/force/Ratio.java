package org.brakerules.calc.force;

import java.math.BigDecimal;
import java.math.MathContext;
import org.brakerules.model.quantity.Length;

/** The ratio of two lengths, to 34 digits. */
final class Ratio {

  private Ratio() {}

  static BigDecimal of(Length one, Length other) {
    return BigDecimal.valueOf(one.nanometres())
        .divide(BigDecimal.valueOf(other.nanometres()), MathContext.DECIMAL128);
  }
}
