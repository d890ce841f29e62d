package org.brakerules.internal.fact;

import org.brakerules.model.part.Condition;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;

/**
 * A part that was removed, or separated from its mate, in this job.
 *
 * @param part where the part belongs
 * @param condition whether it was found or is new
 */
public record Disturbed(Place part, Condition condition) {

  /** The kind of the part. */
  public PartKind partKind() {
    return part.kind();
  }

  /** The station of the part. */
  public Station station() {
    return part.station();
  }

  /** The wheel end of the part. */
  public WheelEndPath wheelEnd() {
    return part.wheelEnd();
  }

  /** The wheel end across the axle. */
  public WheelEndPath partner() {
    return wheelEnd().partner();
  }
}
