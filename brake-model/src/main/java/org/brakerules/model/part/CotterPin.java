package org.brakerules.model.part;

import org.brakerules.model.reading.Station;

/** The cotter pin of a clevis pin. */
@PartRecord
public record CotterPin(Tag tag, @Means("broken cotter pin") Sign broken) implements Part {

  /** Refuses a tag of another kind of part. */
  public CotterPin {
    tag.require(PartKind.COTTER_PIN);
  }

  /** Starts a cotter pin as it was found. */
  public static CotterPinBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.COTTER_PIN, station)));
  }

  /** Starts a new cotter pin, fitted in this job. */
  public static CotterPinBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.COTTER_PIN, station)));
  }

  /** Starts the cotter pin that carries the tag. */
  public static CotterPinBuilder builder(Tag tag) {
    return CotterPinBuilder.builder(Blank.of(CotterPin.class, tag));
  }
}
