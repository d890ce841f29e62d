package org.brakerules.calc.stroke;

import org.brakerules.calc.Estimate;
import org.brakerules.model.quantity.Length;

/**
 * What one looseness costs in stroke.
 *
 * @param looseness the looseness
 * @param play the play as measured, where it is
 * @param stroke what it costs by estimate
 * @param bound what it could cost at the very most
 */
public record StrokeCost(
    Looseness looseness, Length play, Estimate<Length> stroke, Estimate<Length> bound) {

  /** Overhang of the arm over the distance of the bushings makes a tenth more. */
  private static final long OVERHANG_TENTHS = 11;

  static StrokeCost of(Looseness looseness, Length play, CamGeometry geometry) {
    if (play.isNegative()) {
      throw new IllegalArgumentException("No play of " + looseness.inWords() + ": " + play);
    }
    Length stroke = stroke(looseness, play, geometry);
    Length bound =
        looseness == Looseness.BUSHING_AT_HEAD_END ? geometry.atArmFromRoller(play) : stroke;
    return new StrokeCost(looseness, play, new Estimate<>(stroke), new Estimate<>(bound));
  }

  private static Length stroke(Looseness looseness, Length play, CamGeometry geometry) {
    return switch (looseness) {
      case PIN_IN_CLEVIS, PIN_IN_ARM, ADJUSTER_GEAR -> play;
      case SPLINE -> geometry.atArmFromSpline(play);
      case BUSHING_AT_SPLINE_END ->
          new Length(Math.multiplyExact(play.nanometres(), OVERHANG_TENTHS) / 10, play.unit());
      case BUSHING_AT_HEAD_END -> new Length(0, play.unit());
    };
  }

  boolean isMeasuredAtArm() {
    return looseness.isMeasuredAtArm();
  }

  /** The formula with the numbers in it. */
  String step(CamGeometry geometry) {
    return switch (looseness) {
      case PIN_IN_CLEVIS, PIN_IN_ARM, ADJUSTER_GEAR -> play + ", one to one";
      case SPLINE ->
          play + " x " + geometry.arm() + " / " + geometry.splineRadius() + " = " + stroke;
      case BUSHING_AT_SPLINE_END -> play + " x 1.1 = " + stroke;
      case BUSHING_AT_HEAD_END ->
          "about nothing, lift goes from one shoe to the other; at most "
              + play
              + " x "
              + geometry.arm()
              + " / "
              + geometry.lift()
              + " = "
              + bound;
    };
  }
}
