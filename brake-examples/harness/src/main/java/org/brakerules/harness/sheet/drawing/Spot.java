package org.brakerules.harness.sheet.drawing;

import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.reading.Station;

/**
 * What is drawn once, however many parts of its kind lie there.
 *
 * @param kind the kind of part
 * @param station its station
 */
public record Spot(PartKind kind, Station station) {

  /** The spot of a part. */
  public static Spot of(Place place) {
    return new Spot(place.kind(), place.station());
  }

  static Spot of(PartKind kind) {
    return new Spot(kind, Station.WHOLE_PART);
  }
}
