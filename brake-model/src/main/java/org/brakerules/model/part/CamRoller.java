package org.brakerules.model.part;

import org.brakerules.model.reading.Station;

/** A cam roller, of the upper or the lower shoe. */
@PartRecord
public record CamRoller(
    Tag tag,
    @Means("flat on the tread") Sign flat,
    @Means("groove in the tread") Sign groove,
    @Means("pit in the tread") Sign pit,
    @Means("metal broken out of the tread") Sign spalling,
    @Means("roller found seized") Sign seizedAsFound,
    @Means("roller that does not turn after cleaning") Sign stuckAfterCleaning,
    @Means("ends worn to a neck") Sign neckedEnds,
    @Means("roller loose in its pocket") Sign looseInPocket,
    @Means("roller cocked in its pocket") Sign cocked)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public CamRoller {
    tag.require(PartKind.CAM_ROLLER);
  }

  /** Starts a cam roller as it was found. */
  public static CamRollerBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.CAM_ROLLER, station)));
  }

  /** Starts a new cam roller, fitted in this job. */
  public static CamRollerBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.CAM_ROLLER, station)));
  }

  /** Starts the cam roller that carries the tag. */
  public static CamRollerBuilder builder(Tag tag) {
    return CamRollerBuilder.builder(Blank.of(CamRoller.class, tag));
  }
}
