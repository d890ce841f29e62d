package org.brakerules.internal.fact;

import org.brakerules.model.decision.Check;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;

/**
 * A reading proven to be beyond its limit.
 *
 * @param limit the id of the limit
 * @param condition whether the part was found or is new
 * @param check the reading and the limit
 */
public record BeyondLimit(String limit, Condition condition, Check check) {

  /** The kind of the part that was measured. */
  public PartKind partKind() {
    return check.part().kind();
  }

  /** The station of the part that was measured. */
  public Station station() {
    return check.part().station();
  }

  /** The wheel end of the part that was measured. */
  public WheelEndPath wheelEnd() {
    return check.part().wheelEnd();
  }

  /** The wheel end across the axle. */
  public WheelEndPath partner() {
    return wheelEnd().partner();
  }
}
