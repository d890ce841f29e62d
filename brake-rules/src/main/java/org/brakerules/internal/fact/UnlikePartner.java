package org.brakerules.internal.fact;

import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.part.WheelEndPath;

/**
 * The two ends of an axle are both in the job, and differ in something that must be alike.
 *
 * @param matter in what they differ
 * @param wheelEnd one of the two
 */
public record UnlikePartner(AxleMatter matter, WheelEndPath wheelEnd) {

  /** The wheel end across the axle. */
  public WheelEndPath partner() {
    return wheelEnd.partner();
  }
}
