package org.brakerules.model.part;

import org.brakerules.model.reading.Station;

/** A wheel bearing, cone and cup. */
@PartRecord
public record WheelBearing(Tag tag, @Means("pitted, blued or broken cone or cup") Sign bad)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public WheelBearing {
    tag.require(PartKind.WHEEL_BEARING);
  }

  /** Starts a wheel bearing as it was found. */
  public static WheelBearingBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.WHEEL_BEARING, station)));
  }

  /** Starts a new wheel bearing, fitted in this job. */
  public static WheelBearingBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.WHEEL_BEARING, station)));
  }

  /** Starts the wheel bearing that carries the tag. */
  public static WheelBearingBuilder builder(Tag tag) {
    return WheelBearingBuilder.builder(Blank.of(WheelBearing.class, tag));
  }
}
