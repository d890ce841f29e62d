package org.brakerules.calc.force;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.quantity.Torque;

/**
 * By how much the two brakes of an axle differ in force, as a share of the stronger one.
 *
 * @param difference the share
 * @param working how it was worked out
 */
public record AxleBalance(Estimate<Share> difference, Working working) {

  /**
   * Compares two wheel forces that were worked out or measured the same way.
   *
   * @throws IllegalArgumentException if neither is above zero
   */
  public static AxleBalance of(Force left, Force right) {
    return of(left, left.newtons(), right, right.newtons());
  }

  /**
   * Compares the torques on the two camshafts, worked out the same way.
   *
   * @throws IllegalArgumentException if neither is above zero
   */
  public static AxleBalance of(Torque left, Torque right) {
    return of(left, left.newtonMetres(), right, right.newtonMetres());
  }

  private static AxleBalance of(
      Quantity<?> left, BigDecimal leftAmount, Quantity<?> right, BigDecimal rightAmount) {
    BigDecimal stronger = leftAmount.max(rightAmount);
    if (stronger.signum() <= 0) {
      throw new IllegalArgumentException("Nothing at either wheel: " + left + ", " + right);
    }
    BigDecimal percent =
        leftAmount
            .subtract(rightAmount)
            .abs()
            .movePointRight(2)
            .divide(stronger, 1, RoundingMode.HALF_EVEN);
    Estimate<Share> difference = new Estimate<>(new Share(percent));
    Working working =
        start()
            .given("left", left)
            .given("right", right)
            .step(left + " and " + right + " differ by " + difference + " of the stronger")
            .result("difference", difference);
    return new AxleBalance(difference, working);
  }

  /** The same without a result, where something must be known first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  private static Working start() {
    return Working.of(
        "force.axle-balance",
        "Difference of the two brakes of the axle",
        "difference = (stronger - weaker) / stronger",
        Basis.estimate(Standing.DERIVED, "on which wheel the share is based is our own choice"));
  }
}
