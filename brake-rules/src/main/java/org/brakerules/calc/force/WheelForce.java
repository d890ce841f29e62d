package org.brakerules.calc.force;

import java.math.BigDecimal;
import java.math.MathContext;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Ratio;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.ForceUnit;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Torque;

/**
 * The braking force of one wheel at the road. It can be off by a factor of two; hold the left wheel
 * against the right one with the same friction.
 *
 * @param force the force
 * @param working how it was worked out
 */
public record WheelForce(Estimate<Force> force, Working working) {

  /** The mechanical efficiency the worksheet takes. */
  public static final BigDecimal EFFICIENCY = new BigDecimal("0.6");

  private static final BigDecimal NANOMETRES_PER_METRE = new BigDecimal("1000000000");
  private static final BigDecimal TWO_SHOES = BigDecimal.valueOf(2);

  /**
   * The sizes a wheel force depends on.
   *
   * @param lift the lift radius of the cam
   * @param drumRadius the radius of the drum
   * @param rollingRadius the rolling radius of the tyre
   */
  public record Sizes(Length lift, Length drumRadius, Length rollingRadius) {}

  /**
   * The force of one wheel.
   *
   * @param torque the torque on the camshaft, which is push-rod force x arm at a right angle
   * @param sizes the sizes of brake and wheel
   * @param friction the friction of the lining, such as 0.35
   * @throws IllegalArgumentException if a size or the friction is not above zero
   */
  public static WheelForce of(Estimate<Torque> torque, Sizes sizes, BigDecimal friction) {
    if (friction.signum() <= 0 || sizes.lift().nanometres() <= 0) {
      throw new IllegalArgumentException(
          "No friction of " + friction + ", no lift radius of " + sizes.lift());
    }
    BigDecimal wheel = Ratio.of(sizes.drumRadius(), sizes.rollingRadius()).value();
    BigDecimal atCam =
        torque
            .value()
            .newtonMetres()
            .multiply(NANOMETRES_PER_METRE)
            .divide(BigDecimal.valueOf(sizes.lift().nanometres()), MathContext.DECIMAL128);
    BigDecimal newtons =
        atCam.multiply(TWO_SHOES).multiply(friction).multiply(wheel).multiply(EFFICIENCY);
    Estimate<Force> estimate = new Estimate<>(Rounded.toWhole(newtons, ForceUnit.POUND_FORCE));
    Working working =
        start()
            .given("camshaft torque", torque)
            .given("friction", friction)
            .given("lift radius", sizes.lift())
            .given("drum radius", sizes.drumRadius())
            .given("rolling radius", sizes.rollingRadius())
            .given("efficiency", EFFICIENCY)
            .step(
                "2 x "
                    + friction
                    + " x "
                    + torque
                    + " / "
                    + sizes.lift()
                    + " x "
                    + sizes.drumRadius()
                    + " / "
                    + sizes.rollingRadius()
                    + " x "
                    + EFFICIENCY
                    + " = "
                    + estimate)
            .result("wheel force", estimate);
    return new WheelForce(estimate, working);
  }

  /** The same without a result, where something must be known first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  private static Working start() {
    return Working.of(
        "force.wheel",
        "Braking force of one wheel",
        "force = 2 x friction x camshaft torque / lift radius x drum radius / rolling radius x"
            + " efficiency",
        Basis.estimate(
            Standing.PRESS,
            "published accident-reconstruction worksheet; can be off by a factor of two"));
  }
}
