package org.brakerules.calc.force;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * The product of chamber area and arm length, by which brakes are matched: both ends of an axle
 * have the same.
 *
 * @param product square inches times inches, such as 165 for a type 30 on an arm of 5 1/2 in
 * @param working how it was worked out
 */
public record AreaTimesLength(BigDecimal product, Working working) {

  private static final int PLACES_OF_AN_INCH = 3;
  private static final BigDecimal NANOMETRES_PER_INCH =
      BigDecimal.valueOf(Length.parse("1 in").nanometres());

  /**
   * The product of one brake.
   *
   * @param squareInches the effective area of the chamber in square inches
   * @param arm the effective length of the arm
   */
  public static AreaTimesLength of(BigDecimal squareInches, Length arm) {
    BigDecimal inches =
        BigDecimal.valueOf(arm.nanometres())
            .divide(NANOMETRES_PER_INCH, PLACES_OF_AN_INCH, RoundingMode.HALF_EVEN)
            .stripTrailingZeros();
    BigDecimal product = squareInches.multiply(inches).stripTrailingZeros();
    Working working =
        Working.of(
                "force.area-times-length",
                "Chamber area times arm length",
                "product = effective area x arm",
                Basis.estimate(Standing.MEMORY, "how the trade matches brakes"))
            .given("effective area", squareInches.toPlainString() + " in2")
            .given("arm", arm)
            .step(
                squareInches.toPlainString()
                    + " x "
                    + inches.toPlainString()
                    + " = "
                    + product.toPlainString())
            .result("area times length", product.toPlainString());
    return new AreaTimesLength(product, working);
  }
}
