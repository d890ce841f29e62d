package org.brakerules.model.part;

/** The tone ring of the wheel-speed sensor. */
@PartRecord
public record ToneRing(
    Tag tag, @Means("bent ring") Sign bent, @Means("missing tooth") Sign toothMissing)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public ToneRing {
    tag.require(PartKind.TONE_RING);
  }

  /** Starts a tone ring as it was found. */
  public static ToneRingBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.TONE_RING)));
  }

  /** Starts a new tone ring, fitted in this job. */
  public static ToneRingBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.TONE_RING)));
  }

  /** Starts the tone ring that carries the tag. */
  public static ToneRingBuilder builder(Tag tag) {
    return ToneRingBuilder.builder(Blank.of(ToneRing.class, tag));
  }
}
