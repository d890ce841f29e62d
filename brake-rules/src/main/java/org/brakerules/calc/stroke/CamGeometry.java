package org.brakerules.calc.stroke;

import org.brakerules.calc.Ratio;
import org.brakerules.model.quantity.Length;

/**
 * The levers between push rod and shoe.
 *
 * @param arm the effective length of the adjuster arm
 * @param splineRadius the pitch radius of the camshaft spline
 * @param lift the lift radius of the cam, that of the base circle of its involute
 */
public record CamGeometry(Length arm, Length splineRadius, Length lift) {

  /** Why a common lever is taken. */
  public static final String COMMON = "a common one, none is stated";

  /** The lift radius of a common cam, derived: 1/2 in. */
  public static final Length COMMON_LIFT = Length.parse("0.5 in");

  /** The pitch radius of a common spline of 1 1/2 in, derived: between 0.70 and 0.75 in. */
  public static final Length COMMON_SPLINE_RADIUS = Length.parse("0.725 in");

  /**
   * Refuses a lever without length.
   *
   * @throws IllegalArgumentException if a length is not above zero
   */
  public CamGeometry {
    requireLength(arm);
    requireLength(splineRadius);
    requireLength(lift);
  }

  /** A common cam and spline behind an arm of this length. */
  public static CamGeometry common(Length arm) {
    return new CamGeometry(arm, COMMON_SPLINE_RADIUS, COMMON_LIFT);
  }

  /** What play at the pitch radius of the spline is at the end of the arm. */
  Length atArmFromSpline(Length play) {
    return Ratio.of(arm, splineRadius).times(play);
  }

  /** What play at the roller is at the end of the arm. */
  Length atArmFromRoller(Length play) {
    return Ratio.of(arm, lift).times(play);
  }

  private static void requireLength(Length length) {
    if (length.nanometres() <= 0) {
      throw new IllegalArgumentException("No length of a lever: " + length);
    }
  }
}
