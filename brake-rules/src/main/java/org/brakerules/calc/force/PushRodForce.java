package org.brakerules.calc.force;

import java.math.BigDecimal;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.ForceUnit;
import org.brakerules.model.quantity.Pressure;

/**
 * The force of a push rod in the middle of its stroke, return springs left out.
 *
 * @param force the force
 * @param working how it was worked out
 */
public record PushRodForce(Estimate<Force> force, Working working) {

  /**
   * The force of a chamber.
   *
   * @param pressure the pressure in the chamber
   * @param squareInches the effective area of the chamber in square inches, such as 30 of a type 30
   * @throws IllegalArgumentException if pressure or area is not above zero
   */
  public static PushRodForce of(Pressure pressure, BigDecimal squareInches) {
    if (pressure.newtonsPerSquareInch().signum() <= 0 || squareInches.signum() <= 0) {
      throw new IllegalArgumentException(
          "No force of " + pressure + " on " + squareInches + " square inches");
    }
    Force force =
        new Force(pressure.newtonsPerSquareInch().multiply(squareInches), ForceUnit.POUND_FORCE);
    Estimate<Force> estimate = new Estimate<>(force);
    Working working =
        start()
            .given("pressure", pressure)
            .given("effective area", squareInches.toPlainString() + " in2")
            .step(pressure + " x " + squareInches.toPlainString() + " in2 = " + estimate)
            .result("push-rod force", estimate);
    return new PushRodForce(estimate, working);
  }

  /** The same without a result, where something must be known or mended first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  private static Working start() {
    return Working.of(
        "force.push-rod",
        "Push-rod force",
        "force = pressure x effective area, in the middle of the stroke; it falls toward the end",
        Basis.estimate(Standing.GOVERNMENT, "a province's air brake handbook"));
  }
}
