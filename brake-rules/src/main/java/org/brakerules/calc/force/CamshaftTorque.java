package org.brakerules.calc.force;

import java.math.BigDecimal;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.quantity.TorqueUnit;

/**
 * The torque on a camshaft. It falls as the rod leaves the right angle to the arm.
 *
 * @param torque the torque
 * @param working how it was worked out
 */
public record CamshaftTorque(Estimate<Torque> torque, Working working) {

  private static final BigDecimal NANOMETRES_PER_METRE = new BigDecimal("1000000000");
  private static final double MICRODEGREES_PER_DEGREE = 1_000_000;

  /**
   * The torque of a push rod on an arm.
   *
   * @param force the push-rod force
   * @param arm the effective length of the arm
   * @param angle the angle between rod and arm, above zero and below 180 degrees
   * @throws IllegalArgumentException if the angle is outside that
   */
  public static CamshaftTorque of(Estimate<Force> force, Length arm, Angle angle) {
    double degrees = angle.microdegrees() / MICRODEGREES_PER_DEGREE;
    if (degrees <= 0 || degrees >= 180) {
      throw new IllegalArgumentException("No angle between rod and arm: " + angle);
    }
    BigDecimal sine = Rounded.sine(degrees);
    BigDecimal metres = new BigDecimal(arm.nanometres()).divide(NANOMETRES_PER_METRE);
    Estimate<Torque> estimate =
        new Estimate<>(
            Rounded.toWhole(
                force.value().newtons().multiply(metres).multiply(sine),
                TorqueUnit.POUND_FORCE_INCH));
    Working working =
        start()
            .given("push-rod force", force)
            .given("arm", arm)
            .given("angle between rod and arm", angle)
            .step(force + " x " + arm + " x " + sine + " = " + estimate)
            .result("camshaft torque", estimate);
    return new CamshaftTorque(estimate, working);
  }

  /** The same without a result, where something must be known first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  private static Working start() {
    return Working.of(
        "force.camshaft-torque",
        "Torque on the camshaft",
        "torque = push-rod force x arm x sine of the angle between them",
        Basis.estimate(Standing.DERIVED, "a force on a lever"));
  }
}
