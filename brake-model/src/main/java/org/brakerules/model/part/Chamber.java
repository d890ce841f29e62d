package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;

/** The brake chamber. */
@PartRecord
public record Chamber(
    Tag tag,
    @Means("audible leak") Sign leak,
    @Means("loose on its bracket") Sign loose,
    @Means("blocked vent or drain") Sign ventBlocked,
    @Means("size unlike that of the chamber across the axle") Sign sizeUnlikePartner,
    @Means("size unlike the one the vehicle's list names for the axle") Sign sizeUnlikeList,
    @Means("stroke class unlike that of the chamber across the axle") Sign strokeClassUnlikePartner,
    @Means("chamber bolted in the wrong holes of its bracket") Sign wrongBracketHoles,
    @Means("chamber pressure unlike that across the axle in the same application")
        Sign pressureUnlikePartner,
    @Means("chamber pressure plainly unlike that of another axle in the same application")
        Sign pressureUnlikeOtherAxle,
    @Means("push rod slow to go back when the brake is released") Sign slowToRelease,
    @Means("push-rod stroke with the brake fully applied") @AtMost("10 in")
        Measurement<Length> appliedStroke,
    @Means("push-rod stroke until the linings meet the drum") @AtMost("10 in")
        Measurement<Length> freeStroke)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Chamber {
    tag.require(PartKind.CHAMBER);
  }

  /** Starts a chamber as it was found. */
  public static ChamberBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.CHAMBER)));
  }

  /** Starts a new chamber, fitted in this job. */
  public static ChamberBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.CHAMBER)));
  }

  /** Starts the chamber that carries the tag. */
  public static ChamberBuilder builder(Tag tag) {
    return ChamberBuilder.builder(Blank.of(Chamber.class, tag));
  }
}
