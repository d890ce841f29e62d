package org.brakerules.model.quantity;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A force, exact in newtons.
 *
 * @param newtons the amount in newtons
 * @param unit the unit it was written in
 */
public record Force(BigDecimal newtons, ForceUnit unit) implements Quantity<Force> {

  /**
   * Makes a force of an exact amount.
   *
   * @throws QuantityFormatException if the amount is too large or too fine to be kept exactly
   */
  public Force {
    newtons = Exact.kept(Kind.FORCE, newtons);
  }

  /**
   * Reads a force such as {@code 30 lbf} or {@code 150 N}.
   *
   * @throws QuantityFormatException if the text is not such a force
   */
  public static Force parse(String text) {
    NumberAndUnit<ForceUnit> read = NumberAndUnit.read(text, Kind.FORCE);
    return new Force(read.number().multiply(read.unit().newtons), read.unit());
  }

  @Override
  public int compareTo(Force other) {
    return newtons.compareTo(other.newtons);
  }

  @Override
  public Force plus(Force other) {
    return new Force(newtons.add(other.newtons), commonUnit(other));
  }

  @Override
  public Force minus(Force other) {
    return new Force(newtons.subtract(other.newtons), commonUnit(other));
  }

  @Override
  public Force abs() {
    return new Force(newtons.abs(), unit);
  }

  @Override
  public boolean isNegative() {
    return newtons.signum() < 0;
  }

  @Override
  public String format(Unit<Force> in) {
    return Exact.text(newtons, ((ForceUnit) in).newtons, in);
  }

  @Override
  public String toString() {
    return format(unit);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Force that && compareTo(that) == 0;
  }

  @Override
  public int hashCode() {
    return newtons.hashCode();
  }

  private ForceUnit commonUnit(Force other) {
    return unit == other.unit ? unit : ForceUnit.NEWTON;
  }
}
