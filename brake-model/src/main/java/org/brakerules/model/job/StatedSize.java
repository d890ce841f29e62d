package org.brakerules.model.job;

import org.brakerules.model.part.AtMost;
import org.brakerules.model.part.Means;
import org.brakerules.model.quantity.Length;

/**
 * A size the shop states for the figures, of a new part by its maker or measured on the brake.
 *
 * @param size which size
 * @param on the path, or the beginning of the path, of the parts it is for; empty for all parts of
 *     the job
 * @param value the value, not below zero
 */
public record StatedSize(
    @Means("which size") Size size,
    @Means("the path, or its beginning, of the parts it is for; all if it is left out") String on,
    @Means("the size") @AtMost("40 in") Length value) {

  /**
   * Checks the size.
   *
   * @throws IllegalArgumentException if it is below zero
   */
  public StatedSize {
    if (value.isNegative()) {
      throw new IllegalArgumentException("No size of a part: " + value);
    }
  }

  /** Whether it is for the part or wheel end at this path. */
  public boolean covers(String path) {
    return on.isEmpty() || path.equals(on) || path.startsWith(on + "/");
  }
}
