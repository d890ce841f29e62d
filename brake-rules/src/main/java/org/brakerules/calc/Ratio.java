package org.brakerules.calc;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.brakerules.model.quantity.Length;

/**
 * The ratio of two lengths, such as that of two levers.
 *
 * @param value the one divided by the other, to 34 digits
 */
public record Ratio(BigDecimal value) {

  private static final MathContext DIGITS = MathContext.DECIMAL128;

  /** Half a turn divided by pi, pi to 34 digits. */
  private static final BigDecimal DEGREES_PER_RADIAN =
      new BigDecimal("180").divide(new BigDecimal("3.141592653589793238462643383279503"), DIGITS);

  /**
   * The one length divided by the other.
   *
   * @throws IllegalArgumentException if the other is not above zero
   */
  public static Ratio of(Length one, Length other) {
    if (other.nanometres() <= 0) {
      throw new IllegalArgumentException("Nothing is a multiple of a length of " + other);
    }
    return new Ratio(
        BigDecimal.valueOf(one.nanometres())
            .divide(BigDecimal.valueOf(other.nanometres()), DIGITS));
  }

  /** A length times the ratio, to the nanometre. */
  public Length times(Length length) {
    BigDecimal amount = BigDecimal.valueOf(length.nanometres()).multiply(value);
    return new Length(amount.setScale(0, RoundingMode.HALF_EVEN).longValueExact(), length.unit());
  }

  /** The ratio of an arc to its radius as an angle in degrees. */
  public BigDecimal inDegrees() {
    return value.multiply(DEGREES_PER_RADIAN);
  }
}
