package org.brakerules.calc.stroke;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.brakerules.model.quantity.Length;

/**
 * The ratio of two lengths.
 *
 * @param ratio the long one divided by the short one, to 34 digits
 */
record Lever(BigDecimal ratio) {

  private static final MathContext DIGITS = MathContext.DECIMAL128;

  /** Half a turn divided by pi, pi to 34 digits. */
  private static final BigDecimal DEGREES_PER_RADIAN =
      new BigDecimal("180").divide(new BigDecimal("3.141592653589793238462643383279503"), DIGITS);

  static Lever of(Length one, Length other) {
    return new Lever(
        BigDecimal.valueOf(one.nanometres())
            .divide(BigDecimal.valueOf(other.nanometres()), DIGITS));
  }

  /** A length times the ratio, to the nanometre. */
  Length times(Length length) {
    BigDecimal amount = BigDecimal.valueOf(length.nanometres()).multiply(ratio);
    return new Length(amount.setScale(0, RoundingMode.HALF_EVEN).longValueExact(), length.unit());
  }

  /** The ratio of an arc to its radius as an angle in degrees. */
  BigDecimal inDegrees() {
    return ratio.multiply(DEGREES_PER_RADIAN);
  }
}
