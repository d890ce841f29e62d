package org.brakerules.model.part;

import org.brakerules.model.reading.Station;

/** A clip that holds a cam roller in its shoe. */
@PartRecord
public record RollerClip(
    Tag tag, @Means("bent clip") Sign bent, @Means("clip not locked in both webs") Sign notLocked)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public RollerClip {
    tag.require(PartKind.ROLLER_CLIP);
  }

  /** Starts a roller clip as it was found. */
  public static RollerClipBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.ROLLER_CLIP, station)));
  }

  /** Starts a new roller clip, fitted in this job. */
  public static RollerClipBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.ROLLER_CLIP, station)));
  }

  /** Starts the roller clip that carries the tag. */
  public static RollerClipBuilder builder(Tag tag) {
    return RollerClipBuilder.builder(Blank.of(RollerClip.class, tag));
  }
}
