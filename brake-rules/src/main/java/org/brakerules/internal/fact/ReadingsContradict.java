package org.brakerules.internal.fact;

import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Contradiction;
import org.brakerules.model.reading.Station;

/**
 * Two readings that cannot both be right.
 *
 * @param contradiction what they say that cannot be
 * @param part the part they speak of
 * @param reading the one, as it was written down
 * @param otherReading the other, as it was written down
 */
public record ReadingsContradict(
    Contradiction contradiction, Place part, String reading, String otherReading) {

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
