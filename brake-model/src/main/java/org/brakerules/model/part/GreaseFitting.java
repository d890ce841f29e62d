package org.brakerules.model.part;

import org.brakerules.model.reading.Station;

/** A grease fitting of the camshaft or the adjuster. */
@PartRecord
public record GreaseFitting(
    Tag tag,
    @Means("blocked fitting") Sign blocked,
    @Means("fitting that takes no grease") Sign takesNoGrease,
    @Means("old hard grease, and none comes out") Sign hardGrease,
    @Means("purge side of its bushing that stays dry") Sign purgeSideDry)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public GreaseFitting {
    tag.require(PartKind.GREASE_FITTING);
  }

  /** Starts a grease fitting as it was found. */
  public static GreaseFittingBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.GREASE_FITTING, station)));
  }

  /** Starts a new grease fitting, fitted in this job. */
  public static GreaseFittingBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.GREASE_FITTING, station)));
  }

  /** Starts the grease fitting that carries the tag. */
  public static GreaseFittingBuilder builder(Tag tag) {
    return GreaseFittingBuilder.builder(Blank.of(GreaseFitting.class, tag));
  }
}
