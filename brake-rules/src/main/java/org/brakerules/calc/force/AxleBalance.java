package org.brakerules.calc.force;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.Share;

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
    BigDecimal stronger = left.newtons().max(right.newtons());
    if (stronger.signum() <= 0) {
      throw new IllegalArgumentException("No force at either wheel: " + left + ", " + right);
    }
    BigDecimal percent =
        left.newtons()
            .subtract(right.newtons())
            .abs()
            .movePointRight(2)
            .divide(stronger, 1, RoundingMode.HALF_EVEN);
    Estimate<Share> difference = new Estimate<>(new Share(percent));
    Working working =
        Working.of(
                "force.axle-balance",
                "Difference of the two brakes of the axle",
                "difference = (stronger - weaker) / stronger",
                Basis.estimate(
                    Standing.DERIVED, "on which wheel the share is based is our own choice"))
            .given("left", left)
            .given("right", right)
            .step("(" + left + " - " + right + ") / the stronger = " + difference)
            .result("difference", difference);
    return new AxleBalance(difference, working);
  }
}
