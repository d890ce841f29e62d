package org.brakerules.calc.force;

import java.math.BigDecimal;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.ForceUnit;
import org.brakerules.model.quantity.Length;

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

  private static final BigDecimal TWO_SHOES = BigDecimal.valueOf(2);

  /**
   * The sizes a wheel force depends on.
   *
   * @param arm the effective length of the arm
   * @param lift the lift radius of the cam
   * @param drumRadius the radius of the drum
   * @param rollingRadius the rolling radius of the tyre
   */
  public record Sizes(Length arm, Length lift, Length drumRadius, Length rollingRadius) {}

  /**
   * The force of one wheel.
   *
   * @param pushRod the push-rod force
   * @param sizes the sizes of brake and wheel
   * @param friction the friction of the lining, such as 0.35
   */
  public static WheelForce of(Estimate<Force> pushRod, Sizes sizes, BigDecimal friction) {
    BigDecimal cam = Ratio.of(sizes.arm(), sizes.lift());
    BigDecimal wheel = Ratio.of(sizes.drumRadius(), sizes.rollingRadius());
    BigDecimal newtons =
        pushRod
            .value()
            .newtons()
            .multiply(TWO_SHOES)
            .multiply(friction)
            .multiply(cam)
            .multiply(wheel)
            .multiply(EFFICIENCY);
    Estimate<Force> estimate =
        new Estimate<>(new Force(Rounded.kept(newtons), ForceUnit.POUND_FORCE));
    Working working =
        Working.of(
                "force.wheel",
                "Braking force of one wheel",
                "force = 2 x friction x push-rod force x arm / lift radius x drum radius / rolling"
                    + " radius x efficiency",
                Basis.estimate(
                    Standing.PRESS,
                    "published accident-reconstruction worksheet; can be off by a factor of two"))
            .given("push-rod force", pushRod)
            .given("friction", friction)
            .given("arm", sizes.arm())
            .given("lift radius", sizes.lift())
            .given("drum radius", sizes.drumRadius())
            .given("rolling radius", sizes.rollingRadius())
            .given("efficiency", EFFICIENCY)
            .step(
                "2 x "
                    + friction
                    + " x "
                    + pushRod
                    + " x "
                    + sizes.arm()
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
}
