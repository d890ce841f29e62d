package org.brakerules.calc.stroke;

import org.brakerules.calc.Basis;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * How far the rod of a linked adjuster moves before its linkage does. Play of the small clevis pin
 * costs no stroke, but by so much the adjuster may leave the brake too loose.
 *
 * @param stroke the push-rod stroke that the adjuster does not feel
 * @param working how it was worked out
 */
public record DeadBand(Estimate<Length> stroke, Working working) {

  /**
   * The dead band of a pin.
   *
   * @param play the play of the small clevis pin along the rod
   * @throws IllegalArgumentException if it is below zero
   */
  public static DeadBand of(Length play) {
    if (play.isNegative()) {
      throw new IllegalArgumentException("No play of a pin: " + play);
    }
    Estimate<Length> stroke = new Estimate<>(play);
    return new DeadBand(
        stroke,
        Working.of(
                "adjuster.dead-band",
                "Stroke that a linked adjuster does not feel",
                "dead band = play of the small clevis pin, one to one",
                Basis.estimate(Standing.DERIVED, "the pin moves its play before the link does"))
            .given("play of the small clevis pin", play)
            .step(play + ", one to one")
            .result("dead band", stroke));
  }
}
