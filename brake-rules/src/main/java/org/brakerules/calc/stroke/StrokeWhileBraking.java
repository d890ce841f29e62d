package org.brakerules.calc.stroke;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;

/**
 * The stroke a brake needs while it holds a vehicle back, as an accident investigator estimates it
 * from the stroke measured at rest.
 *
 * @param stroke the stroke at the end of the braking
 * @param working how it was worked out
 */
public record StrokeWhileBraking(Estimate<Length> stroke, Working working) {

  private static final Length DYNAMIC = Length.parse("0.05 in");
  private static final Length PER_SECOND = Length.parse("0.034 in");

  /**
   * The stroke after a time of braking.
   *
   * @param measured the applied stroke as measured at rest
   * @param heatGrowth what the heat the drum had already costs
   * @param seconds how long the brake is applied, not below zero
   * @throws IllegalArgumentException if the time is below zero
   */
  public static StrokeWhileBraking of(Length measured, Length heatGrowth, BigDecimal seconds) {
    if (seconds.signum() < 0) {
      throw new IllegalArgumentException("No time of braking: " + seconds + " s");
    }
    long growth =
        seconds
            .multiply(BigDecimal.valueOf(PER_SECOND.nanometres()))
            .setScale(0, RoundingMode.HALF_EVEN)
            .longValueExact();
    Length whileBraking = new Length(growth, LengthUnit.INCH);
    Length stroke = measured.plus(heatGrowth).plus(DYNAMIC).plus(whileBraking);
    Working working =
        Working.of(
                "stroke.while-braking",
                "Stroke while braking",
                "stroke = measured + heat growth + 0.05 in + 0.034 in a second x time",
                Basis.estimate(Standing.PRESS, "published accident-reconstruction worksheet"))
            .given("measured", measured)
            .given("heat growth", heatGrowth)
            .given("time", seconds + " s")
            .step(
                measured
                    + " + "
                    + heatGrowth
                    + " + "
                    + DYNAMIC
                    + " + "
                    + whileBraking
                    + " = "
                    + stroke)
            .result("stroke", new Estimate<>(stroke));
    return new StrokeWhileBraking(new Estimate<>(stroke), working);
  }
}
