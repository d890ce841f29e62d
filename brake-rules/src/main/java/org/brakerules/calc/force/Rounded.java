package org.brakerules.calc.force;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Turns floating-point numbers into decimals that a reader can follow with a pocket calculator. */
final class Rounded {

  private static final int PLACES_OF_A_SINE = 6;
  private static final int PLACES_KEPT = 20;

  private Rounded() {}

  static BigDecimal sine(double degrees) {
    return BigDecimal.valueOf(Math.sin(Math.toRadians(degrees)))
        .setScale(PLACES_OF_A_SINE, RoundingMode.HALF_EVEN)
        .stripTrailingZeros();
  }

  /** As fine as a quantity can be kept. */
  static BigDecimal kept(BigDecimal number) {
    return number.setScale(PLACES_KEPT, RoundingMode.HALF_EVEN);
  }
}
