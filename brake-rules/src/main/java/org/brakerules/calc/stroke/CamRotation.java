package org.brakerules.calc.stroke;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Ratio;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.AngleUnit;
import org.brakerules.model.quantity.Length;

/**
 * How far the cam has turned for wear that the adjuster has taken up: of linings, drum and rollers.
 * It costs no stroke, but the cam has an end.
 *
 * @param used how far it has turned since all of them were new
 * @param working how it was worked out
 */
public record CamRotation(Estimate<Angle> used, Working working) {

  /** Where a province's handbook sees the end of the cam. */
  private static final Angle END = Angle.parse("120 deg");

  /**
   * The rotation that wear has used up.
   *
   * @param lining what the lining has lost at the centre of the shoe
   * @param drum what the drum has gained on its radius
   * @param roller what the roller has lost on its radius
   * @param lift the lift radius of the cam
   * @throws IllegalArgumentException if a wear is below zero, or the lift radius not above it
   */
  public static CamRotation usedBy(Length lining, Length drum, Length roller, Length lift) {
    if (lining.isNegative() || drum.isNegative() || roller.isNegative()) {
      throw new IllegalArgumentException(
          "No wear below zero: lining " + lining + ", drum " + drum + ", roller " + roller);
    }
    Length atShoe = lining.plus(drum);
    Length atRoller = atShoe.plus(atShoe).plus(roller);
    Angle used = degrees(Ratio.of(atRoller, lift).inDegrees());
    Working working =
        start()
            .given("wear of the lining", lining)
            .given("wear of the drum on its radius", drum)
            .given("wear of the roller on its radius", roller)
            .given("lift radius", lift)
            .step("2 x (" + lining + " + " + drum + ") + " + roller + " = " + atRoller)
            .step(atRoller + " / " + lift + " in degrees = " + used)
            .result("rotation used", new Estimate<>(used));
    return new CamRotation(new Estimate<>(used), withEnd(working, used));
  }

  private static Working withEnd(Working working, Angle used) {
    return used.compareTo(END) >= 0
        ? working.result(
            "at " + END + " or more", "the cam is near its end; measure the rotation itself")
        : working;
  }

  /**
   * The rotation that is left until the cam stands at its limit, and the lining that is.
   *
   * @param turned the rotation as measured, linings on the drum
   * @param limit the most rotation allowed
   * @param lift the lift radius of the cam
   */
  public static Working left(Angle turned, Angle limit, Length lift) {
    Angle left = limit.minus(turned);
    Working working =
        leftOf(turned)
            .given("limit", limit)
            .given("lift radius", lift)
            .step(limit + " - " + turned + " = " + left)
            .result("rotation left", left);
    return left.isNegative()
        ? working.result("the cam is", "past its limit")
        : working.result(
            "that is, of lining (its own limit may come first)", liningLeft(left, lift));
  }

  /** The rotation left without a result, where something must be known first. */
  public static Working leftMissing(Angle turned, String what) {
    return leftOf(turned).missing(what);
  }

  private static Working leftOf(Angle turned) {
    return Working.of(
            "cam-rotation.left",
            "Rotation of the cam that is left",
            "left = limit - rotation; lining = left as an arc x lift radius / 2",
            Basis.estimate(
                Standing.DERIVED, "the centre of a shoe moves half as far as its roller"))
        .given("rotation", turned);
  }

  /**
   * The lining that may still wear until the cam stands at its limit.
   *
   * @param left the rotation that is left
   * @param lift the lift radius of the cam
   */
  public static Estimate<Length> liningLeft(Angle left, Length lift) {
    BigDecimal degrees = BigDecimal.valueOf(left.microdegrees()).movePointLeft(6);
    BigDecimal perDegree = new Ratio(BigDecimal.ONE).inDegrees();
    BigDecimal atRoller =
        BigDecimal.valueOf(lift.nanometres())
            .multiply(degrees)
            .divide(perDegree, 1, RoundingMode.HALF_EVEN);
    long atShoe =
        atRoller.divide(BigDecimal.valueOf(2), 0, RoundingMode.HALF_EVEN).longValueExact();
    return new Estimate<>(new Length(atShoe, lift.unit()));
  }

  /** To a tenth of a degree: the model is not better than that. */
  private static Angle degrees(BigDecimal degrees) {
    BigDecimal rounded = degrees.setScale(1, RoundingMode.HALF_EVEN);
    return new Angle(rounded.movePointRight(6).longValueExact(), AngleUnit.DEGREE);
  }

  /** The rotation used without a result, where something must be known first. */
  public static Working usedMissing(String what) {
    return start().missing(what);
  }

  /** The same where two values cannot both be right. */
  public static Working usedContradicted(String one, Length value, String other, Length otherOne) {
    return start().contradicted(one, value, other, otherOne);
  }

  private static Working start() {
    return Working.of(
        "cam-rotation.used",
        "Rotation of the cam used up by wear",
        "rotation = (2 x (lining + drum on its radius) + roller) / lift radius",
        Basis.estimate(
            Standing.DERIVED,
            "the shoe turns about its anchor, so that its centre moves half as far as its"
                + " roller"));
  }
}
