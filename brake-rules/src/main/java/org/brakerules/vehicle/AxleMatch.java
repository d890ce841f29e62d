package org.brakerules.vehicle;

import org.brakerules.model.layout.AxleMatter;

/**
 * Whether the two ends of an axle are alike in one matter.
 *
 * @param matter the matter
 * @param likeness whether they are alike
 * @param left what was stated of the left end; empty if nothing was
 * @param right the same of the right end
 */
public record AxleMatch(AxleMatter matter, Likeness likeness, String left, String right) {

  /** How two ends compare. */
  public enum Likeness {
    /** Both ends state the same. */
    ALIKE,
    /** The ends state different things. */
    UNLIKE,
    /** At least one end does not state it. */
    NOT_STATED
  }
}
