package org.brakerules.vehicle;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;

/**
 * How one service brake stands.
 *
 * @param wheelEnd the brake, by its wheel end
 * @param stroke how its stroke stands
 * @param beyond how far the stroke is beyond its strictest limit; empty if it is not
 * @param otherwise what else fails the law of the rule set at this brake, by the paths of its parts
 */
public record BrakeCount(
    WheelEndPath wheelEnd, Stroke stroke, Optional<Length> beyond, List<String> otherwise) {

  /** How a stroke stands against its limit. */
  public enum Stroke {
    /** Inside every limit. */
    WITHIN,
    /** Beyond a limit. */
    BEYOND,
    /** Not measured, not as its limit wants it, or too close to the limit to tell. */
    OPEN
  }

  /** Keeps its own copy of the list. */
  public BrakeCount {
    otherwise = List.copyOf(otherwise);
  }
}
