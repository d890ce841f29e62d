package org.brakerules.model.part;

import org.brakerules.model.reading.Station;

/** The pin in a shoe on which the return spring hooks. */
@PartRecord
public record ReturnSpringPin(
    Tag tag,
    @Means("pin stuck in the shoe") Sign stuck,
    @Means("worn pin") Sign worn,
    @Means("broken pin") Sign broken)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public ReturnSpringPin {
    tag.require(PartKind.RETURN_SPRING_PIN);
  }

  /** Starts a return spring pin as it was found. */
  public static ReturnSpringPinBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.RETURN_SPRING_PIN, station)));
  }

  /** Starts a new return spring pin, fitted in this job. */
  public static ReturnSpringPinBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.RETURN_SPRING_PIN, station)));
  }

  /** Starts the return spring pin that carries the tag. */
  public static ReturnSpringPinBuilder builder(Tag tag) {
    return ReturnSpringPinBuilder.builder(Blank.of(ReturnSpringPin.class, tag));
  }
}
