package org.brakerules.model.part;

/** The air hose of the chamber. */
@PartRecord
public record Hose(
    Tag tag,
    @Means("chafed hose") Sign chafed,
    @Means("bulging hose") Sign bulging,
    @Means("leaking hose") Sign leak)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Hose {
    tag.require(PartKind.HOSE);
  }

  /** Starts a hose as it was found. */
  public static HoseBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.HOSE)));
  }

  /** Starts a new hose, fitted in this job. */
  public static HoseBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.HOSE)));
  }

  /** Starts the hose that carries the tag. */
  public static HoseBuilder builder(Tag tag) {
    return HoseBuilder.builder(Blank.of(Hose.class, tag));
  }
}
