package org.brakerules.model.part;

/** The washer between cam head and spider. */
@PartRecord
public record HeadWasher(
    Tag tag,
    @Means("cupped washer") Sign cupped,
    @Means("grooved washer") Sign grooved,
    @Means("washer worn on one side") Sign wornOneSide)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public HeadWasher {
    tag.require(PartKind.HEAD_WASHER);
  }

  /** Starts a head washer as it was found. */
  public static HeadWasherBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.HEAD_WASHER)));
  }

  /** Starts a new head washer, fitted in this job. */
  public static HeadWasherBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.HEAD_WASHER)));
  }

  /** Starts the head washer that carries the tag. */
  public static HeadWasherBuilder builder(Tag tag) {
    return HeadWasherBuilder.builder(Blank.of(HeadWasher.class, tag));
  }
}
