package org.brakerules.model.part;

/** The jam nut that locks the clevis on the push rod. */
@PartRecord
public record JamNut(Tag tag, @Means("loose jam nut") Sign loose) implements Part {

  /** Refuses a tag of another kind of part. */
  public JamNut {
    tag.require(PartKind.JAM_NUT);
  }

  /** Starts a jam nut as it was found. */
  public static JamNutBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.JAM_NUT)));
  }

  /** Starts a new jam nut, fitted in this job. */
  public static JamNutBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.JAM_NUT)));
  }

  /** Starts the jam nut that carries the tag. */
  public static JamNutBuilder builder(Tag tag) {
    return JamNutBuilder.builder(Blank.of(JamNut.class, tag));
  }
}
