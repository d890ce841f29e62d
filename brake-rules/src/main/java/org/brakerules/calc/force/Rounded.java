package org.brakerules.calc.force;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.ForceUnit;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.quantity.TorqueUnit;

/** Turns floating-point numbers into decimals that a reader can follow with a pocket calculator. */
final class Rounded {

  private static final int PLACES_OF_A_SINE = 6;

  private Rounded() {}

  static BigDecimal sine(double degrees) {
    return BigDecimal.valueOf(Math.sin(Math.toRadians(degrees)))
        .setScale(PLACES_OF_A_SINE, RoundingMode.HALF_EVEN)
        .stripTrailingZeros();
  }

  /** A force to the whole unit: the model behind it is not better than that. */
  static Force toWhole(BigDecimal newtons, ForceUnit unit) {
    return new Force(whole(newtons, Force.parse("1 " + unit.symbol()).newtons()), unit);
  }

  /** A torque to the whole unit. */
  static Torque toWhole(BigDecimal newtonMetres, TorqueUnit unit) {
    return new Torque(whole(newtonMetres, Torque.parse("1 " + unit.symbol()).newtonMetres()), unit);
  }

  private static BigDecimal whole(BigDecimal amount, BigDecimal ofOne) {
    return amount.divide(ofOne, 0, RoundingMode.HALF_EVEN).multiply(ofOne);
  }
}
