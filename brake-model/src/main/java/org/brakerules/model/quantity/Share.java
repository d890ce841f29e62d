package org.brakerules.model.quantity;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A share of a whole, exact in percent: crack depth over the lining thickness that is left.
 *
 * @param percent the amount in percent
 */
public record Share(BigDecimal percent) implements Quantity<Share> {

  /**
   * Makes a share of an exact amount.
   *
   * @throws QuantityFormatException if the amount is too large or too fine to be kept exactly
   */
  public Share {
    percent = Exact.kept(Kind.SHARE, percent);
  }

  /**
   * Reads a share such as {@code 50 %}.
   *
   * @throws QuantityFormatException if the text is not such a share
   */
  public static Share parse(String text) {
    return new Share(NumberAndUnit.read(text, Kind.SHARE).number());
  }

  @Override
  public ShareUnit unit() {
    return ShareUnit.PERCENT;
  }

  @Override
  public int compareTo(Share other) {
    return percent.compareTo(other.percent);
  }

  @Override
  public Share plus(Share other) {
    return new Share(percent.add(other.percent));
  }

  @Override
  public Share minus(Share other) {
    return new Share(percent.subtract(other.percent));
  }

  @Override
  public Share abs() {
    return new Share(percent.abs());
  }

  @Override
  public boolean isNegative() {
    return percent.signum() < 0;
  }

  @Override
  public String format(Unit<Share> in) {
    return Exact.text(percent, BigDecimal.ONE, in);
  }

  @Override
  public String toString() {
    return format(unit());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Share that && compareTo(that) == 0;
  }

  @Override
  public int hashCode() {
    return percent.hashCode();
  }
}
