package org.brakerules.model.quantity;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A pressure, exact in newtons per square inch.
 *
 * <p>A psi is no finite decimal of a pascal, nor a pascal of a psi. In newtons per square inch both
 * are finite, so pressures in either unit are compared and added without rounding.
 *
 * @param newtonsPerSquareInch the amount in newtons per square inch of 645.16 mm2
 * @param unit the unit it was written in
 */
public record Pressure(BigDecimal newtonsPerSquareInch, PressureUnit unit)
    implements Quantity<Pressure> {

  /**
   * Makes a pressure of an exact amount.
   *
   * @throws QuantityFormatException if the amount is too large or too fine to be kept exactly
   */
  public Pressure {
    newtonsPerSquareInch = Exact.kept(Kind.PRESSURE, newtonsPerSquareInch);
  }

  /**
   * Reads a pressure such as {@code 90 psi} or {@code 620 kPa}.
   *
   * @throws QuantityFormatException if the text is not such a pressure
   */
  public static Pressure parse(String text) {
    NumberAndUnit<PressureUnit> read = NumberAndUnit.read(text, Kind.PRESSURE);
    return new Pressure(read.number().multiply(read.unit().newtonsPerSquareInch), read.unit());
  }

  @Override
  public int compareTo(Pressure other) {
    return newtonsPerSquareInch.compareTo(other.newtonsPerSquareInch);
  }

  @Override
  public Pressure plus(Pressure other) {
    return new Pressure(newtonsPerSquareInch.add(other.newtonsPerSquareInch), commonUnit(other));
  }

  @Override
  public Pressure minus(Pressure other) {
    return new Pressure(
        newtonsPerSquareInch.subtract(other.newtonsPerSquareInch), commonUnit(other));
  }

  @Override
  public Pressure abs() {
    return new Pressure(newtonsPerSquareInch.abs(), unit);
  }

  @Override
  public boolean isNegative() {
    return newtonsPerSquareInch.signum() < 0;
  }

  @Override
  public String format(Unit<Pressure> in) {
    return Exact.text(newtonsPerSquareInch, ((PressureUnit) in).newtonsPerSquareInch, in);
  }

  @Override
  public String toString() {
    return format(unit);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Pressure that && compareTo(that) == 0;
  }

  @Override
  public int hashCode() {
    return newtonsPerSquareInch.hashCode();
  }

  private PressureUnit commonUnit(Pressure other) {
    return unit == other.unit ? unit : PressureUnit.KILOPASCAL;
  }
}
