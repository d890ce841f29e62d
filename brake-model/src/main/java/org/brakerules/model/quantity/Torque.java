package org.brakerules.model.quantity;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A torque, exact in newton metres.
 *
 * @param newtonMetres the amount in newton metres
 * @param unit the unit it was written in
 */
public record Torque(BigDecimal newtonMetres, TorqueUnit unit) implements Quantity<Torque> {

  /**
   * Makes a torque of an exact amount.
   *
   * @throws QuantityFormatException if the amount is too large or too fine to be kept exactly
   */
  public Torque {
    newtonMetres = Exact.kept(Kind.TORQUE, newtonMetres);
  }

  /**
   * Reads a torque such as {@code 15 lbf.ft} or {@code 20.3 N.m}.
   *
   * @throws QuantityFormatException if the text is not such a torque
   */
  public static Torque parse(String text) {
    NumberAndUnit<TorqueUnit> read = NumberAndUnit.read(text, Kind.TORQUE);
    return new Torque(read.number().multiply(read.unit().newtonMetres), read.unit());
  }

  @Override
  public int compareTo(Torque other) {
    return newtonMetres.compareTo(other.newtonMetres);
  }

  @Override
  public Torque plus(Torque other) {
    return new Torque(newtonMetres.add(other.newtonMetres), commonUnit(other));
  }

  @Override
  public Torque minus(Torque other) {
    return new Torque(newtonMetres.subtract(other.newtonMetres), commonUnit(other));
  }

  @Override
  public Torque abs() {
    return new Torque(newtonMetres.abs(), unit);
  }

  @Override
  public boolean isNegative() {
    return newtonMetres.signum() < 0;
  }

  @Override
  public String format(Unit<Torque> in) {
    return Exact.text(newtonMetres, ((TorqueUnit) in).newtonMetres, in);
  }

  @Override
  public String toString() {
    return format(unit);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Torque that && compareTo(that) == 0;
  }

  @Override
  public int hashCode() {
    return newtonMetres.hashCode();
  }

  private TorqueUnit commonUnit(Torque other) {
    return unit == other.unit ? unit : TorqueUnit.NEWTON_METRE;
  }
}
