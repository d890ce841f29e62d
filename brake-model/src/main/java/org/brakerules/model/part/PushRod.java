package org.brakerules.model.part;

import org.brakerules.model.quantity.Angle;
import org.brakerules.model.reading.Measurement;

/** The push rod of the chamber. */
@PartRecord
public record PushRod(
    Tag tag,
    @Means("bent rod") Sign bent,
    @Means("rod rubbing its hole") Sign rubbing,
    @Means("worn thread of the rod") Sign threadWorn,
    @Means("rod and arm out of one plane") Sign outOfPlane,
    @Means("rod and arm plainly off a right angle when applied") Sign offRightAngle,
    @Means("angle between rod and arm when applied") @AtMost("180 deg")
        Measurement<Angle> angleApplied)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public PushRod {
    tag.require(PartKind.PUSH_ROD);
  }

  /** Starts a push rod as it was found. */
  public static PushRodBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.PUSH_ROD)));
  }

  /** Starts a new push rod, fitted in this job. */
  public static PushRodBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.PUSH_ROD)));
  }

  /** Starts the push rod that carries the tag. */
  public static PushRodBuilder builder(Tag tag) {
    return PushRodBuilder.builder(Blank.of(PushRod.class, tag));
  }
}
