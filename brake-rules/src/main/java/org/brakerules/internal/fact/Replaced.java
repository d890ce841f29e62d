package org.brakerules.internal.fact;

import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.WheelEndPath;

/**
 * Some part of a kind is replaced at a wheel end: what consequences rest on.
 *
 * @param partKind the kind
 * @param wheelEnd the wheel end
 */
public record Replaced(PartKind partKind, WheelEndPath wheelEnd) {

  /** The wheel end across the axle. */
  public WheelEndPath partner() {
    return wheelEnd.partner();
  }
}
