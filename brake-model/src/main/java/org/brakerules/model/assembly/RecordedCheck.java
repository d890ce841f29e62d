package org.brakerules.model.assembly;

import java.util.Optional;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;

/**
 * One check of the finished work as it was recorded: how it came out, or what was read, or both.
 *
 * @param check the id of the check, such as {@code FINAL-180}
 * @param result how it came out; empty if only a reading is stated
 * @param reading what was read, an empty measurement if nothing was
 */
public record RecordedCheck(String check, Optional<Result> result, Measurement<Length> reading) {

  /** How a check came out. */
  public enum Result {
    PASSED,
    FAILED
  }

  /**
   * Refuses a check of which nothing is stated.
   *
   * @throws IllegalArgumentException if there is neither a result nor a reading
   */
  public RecordedCheck {
    if (result.isEmpty() && !reading.taken()) {
      throw new IllegalArgumentException(
          "The check " + check + " has no result and no reading; state one of them.");
    }
  }
}
