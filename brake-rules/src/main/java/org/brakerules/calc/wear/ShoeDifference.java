package org.brakerules.calc.wear;

import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * How much the linings of the two shoes of a wheel differ, each by its thinnest place.
 *
 * @param difference the difference, not below zero
 * @param working how it was worked out
 */
public record ShoeDifference(Length difference, Working working) {

  /** Holds the lining of the upper shoe against that of the lower one. */
  public static ShoeDifference of(LiningThickness upper, LiningThickness lower) {
    Length difference = upper.thinnest().minus(lower.thinnest()).abs();
    Working working =
        Working.of(
                "lining.between-shoes",
                "Difference between the linings of the two shoes",
                "difference = thinnest of one - thinnest of the other, without sign",
                Basis.exact(
                    Standing.COMMON_PRACTICE,
                    "a shoe that wears alone hangs on rollers, spring or anchor"))
            .given("thinnest, upper shoe", upper.thinnest())
            .given("thinnest, lower shoe", lower.thinnest())
            .step(upper.thinnest() + " and " + lower.thinnest() + " differ by " + difference)
            .result("difference", difference);
    return new ShoeDifference(difference, working);
  }
}
