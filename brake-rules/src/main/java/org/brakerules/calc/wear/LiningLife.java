package org.brakerules.calc.wear;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * How far a lining may still run, from its thinnest point read at two odometer readings. It is a
 * guess that the wear goes on as it did, and never a promise.
 *
 * @param shortest the distance if both readings err to the worse, in the unit of the odometer
 * @param likely the distance by the readings as they are; zero if the lining is at its limit
 * @param working how it was worked out
 */
public record LiningLife(BigDecimal shortest, BigDecimal likely, Working working) {

  /**
   * The thinnest point of a lining at an odometer reading.
   *
   * @param thickness the thickness at the thinnest point
   * @param odometer the odometer, in any unit that both readings share
   */
  public record WearPoint(Length thickness, BigDecimal odometer) {}

  /**
   * Works out the distance.
   *
   * @param before the earlier reading
   * @param now the later one
   * @param limit the least thickness allowed
   * @param uncertainty the uncertainty of each thickness, not below zero
   * @param unit the unit of the odometer, such as {@code km}
   * @throws IllegalArgumentException if the odometer did not go on or the lining did not get
   *     thinner between the readings, or if a length is below zero
   */
  public static LiningLife of(
      WearPoint before, WearPoint now, Length limit, Length uncertainty, String unit) {
    if (limit.nanometres() <= 0 || uncertainty.isNegative() || now.thickness().isNegative()) {
      throw new IllegalArgumentException(
          "No limit of "
              + limit
              + ", no uncertainty of "
              + uncertainty
              + ", no lining of "
              + now.thickness());
    }
    BigDecimal run = now.odometer().subtract(before.odometer());
    Length worn = before.thickness().minus(now.thickness());
    if (run.signum() <= 0 || worn.nanometres() <= 0) {
      throw new IllegalArgumentException(
          "Between the readings the vehicle ran "
              + run
              + " "
              + unit
              + " and the lining lost "
              + worn
              + "; both must be above zero.");
    }
    Length left = now.thickness().minus(limit);
    BigDecimal likely = distance(run, left, worn);
    BigDecimal shortest =
        distance(run, left.minus(uncertainty), worn.plus(uncertainty).plus(uncertainty));
    Working given =
        start()
            .given("thinnest before", before.thickness() + " at " + before.odometer() + " " + unit)
            .given("thinnest now", now.thickness() + " at " + now.odometer() + " " + unit)
            .given("limit", limit)
            .given("uncertainty of each", uncertainty);
    Working working =
        left.nanometres() <= 0
            ? given.result("distance", "none: the lining is at its limit or past it")
            : given
                .step(run + " " + unit + " x " + left + " / " + worn + " = " + likely + " " + unit)
                .step("with both readings off by " + uncertainty + ": " + shortest + " " + unit)
                .result("distance", "about " + shortest + " to " + likely + " " + unit);
    return new LiningLife(shortest, likely, working);
  }

  /** The work without a result, where something must be known first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  /** The work of a lining that did not get thinner. */
  public static Working contradicted(Length before, Length now) {
    return start().contradicted("thinnest now", now, "thinnest before", before);
  }

  private static Working start() {
    return Working.of(
        "lining.life",
        "Distance to the limit of the lining",
        "distance = distance run x what is left / what was worn",
        Basis.estimate(
            Standing.DERIVED, "as if it wore on as before; measure again, it is no promise"));
  }

  private static BigDecimal distance(BigDecimal run, Length left, Length worn) {
    if (left.nanometres() <= 0) {
      return BigDecimal.ZERO;
    }
    return run.multiply(BigDecimal.valueOf(left.nanometres()))
        .divide(BigDecimal.valueOf(worn.nanometres()), MathContext.DECIMAL64)
        .setScale(0, RoundingMode.DOWN);
  }
}
