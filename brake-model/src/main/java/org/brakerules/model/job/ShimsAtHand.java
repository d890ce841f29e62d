package org.brakerules.model.job;

import org.brakerules.model.part.AtMost;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Means;
import org.brakerules.model.quantity.Length;

/**
 * Shims of one thickness that may go into a stack.
 *
 * @param thickness the thickness of each, above zero
 * @param count how many there are, from 1 to 99
 * @param condition whether they came off a brake, and are fit to go back, or out of a box
 */
public record ShimsAtHand(
    @Means("thickness of each shim") @AtMost("0.5 in") Length thickness,
    @Means("how many there are") int count,
    @Means("new, or as found if they came off a brake") Condition condition) {

  /** The most shims of one thickness. */
  public static final int MOST = 99;

  /**
   * Checks the shims.
   *
   * @throws IllegalArgumentException if they have no thickness, or if there is none or too many
   */
  public ShimsAtHand {
    if (thickness.nanometres() <= 0) {
      throw new IllegalArgumentException("No thickness of a shim: " + thickness);
    }
    if (count < 1 || count > MOST) {
      throw new IllegalArgumentException(
          count + " shims of " + thickness + "; state from 1 to " + MOST + ".");
    }
  }
}
