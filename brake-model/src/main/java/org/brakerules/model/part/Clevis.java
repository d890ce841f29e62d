package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;

/** The clevis between push rod and adjuster arm. */
@PartRecord
public record Clevis(
    Tag tag,
    @Means("enlarged pin hole") Sign holeEnlarged,
    @Means("pin hole out of round") Sign holeOutOfRound,
    @Means("worn thread") Sign threadWorn,
    @Means("push-rod thread short in the clevis") Sign threadShort,
    @Means("push rod standing out into the path of the arm") Sign rodInArmsPath,
    @Means("play between captive nut, body and thread") Sign captiveNutPlay,
    @Means("movement of the pin in its hole") @AtMost("1 in") Measurement<Length> pinMovement,
    @Means("thread of the push rod held in the clevis") @AtMost("6 in")
        Measurement<Length> threadEngagement,
    @Means("push rod standing out inside the clevis") @AtMost("6 in")
        Measurement<Length> rodProtrusion)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Clevis {
    tag.require(PartKind.CLEVIS);
  }

  /** Starts a clevis as it was found. */
  public static ClevisBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.CLEVIS)));
  }

  /** Starts a new clevis, fitted in this job. */
  public static ClevisBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.CLEVIS)));
  }

  /** Starts the clevis that carries the tag. */
  public static ClevisBuilder builder(Tag tag) {
    return ClevisBuilder.builder(Blank.of(Clevis.class, tag));
  }
}
