package org.brakerules.calc.shim;

import java.util.Comparator;
import org.brakerules.model.part.Condition;
import org.brakerules.model.quantity.Length;

/**
 * One shim that may go into a stack.
 *
 * @param thickness the thickness, above zero
 * @param condition whether it came off a brake, and is fit to go back, or out of a box
 */
public record ShimPiece(Length thickness, Condition condition) {

  /** Thickest first; of one thickness the salvaged before the new. */
  static final Comparator<ShimPiece> THICKEST_FIRST =
      Comparator.comparing(ShimPiece::thickness)
          .reversed()
          .thenComparing(piece -> !piece.isSalvaged());

  /** Refuses a shim without thickness. */
  public ShimPiece {
    if (thickness.isNegative() || thickness.nanometres() == 0) {
      throw new IllegalArgumentException("No thickness of a shim: " + thickness);
    }
  }

  /** Whether it came off a brake. */
  public boolean isSalvaged() {
    return condition == Condition.AS_FOUND;
  }
}
