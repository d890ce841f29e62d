package org.brakerules.calc.shim;

import org.brakerules.model.quantity.Length;

/**
 * The end play that is allowed, both ends of the band included.
 *
 * @param min the least end play, not below zero
 * @param max the most end play, not below {@code min}
 */
public record EndPlayBand(Length min, Length max) {

  /** Refuses a band that is upside down or lets parts press on each other. */
  public EndPlayBand {
    if (min.isNegative() || max.compareTo(min) < 0) {
      throw new IllegalArgumentException("No band of end play: " + min + " to " + max);
    }
  }

  /** Whether an end play is inside the band. */
  public boolean contains(Length endPlay) {
    return endPlay.compareTo(min) >= 0 && endPlay.compareTo(max) <= 0;
  }
}
