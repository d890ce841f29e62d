package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/** The large clevis pin, or the small one of a linked adjuster. */
@PartRecord
public record ClevisPin(
    Tag tag,
    @Means("nominal size of the pin") PinSize size,
    @Means("stepped shank") Sign stepped,
    @Means("grooved shank") Sign grooved,
    @Means("shank thinner in one place") Sign thinnerInOnePlace,
    @Means("wear that slants along the shank") Sign wearSlanting,
    @Means("a bolt in place of the pin") Sign boltInstead,
    @Means("pin seized in its hole") Sign seized,
    @Means("diameter of the shank where it is thinnest") @AtMost("4 in")
        Measurement<Length> diameter)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public ClevisPin {
    tag.require(PartKind.CLEVIS_PIN);
  }

  /** Starts a clevis pin as it was found. */
  public static ClevisPinBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.CLEVIS_PIN, station)));
  }

  /** Starts a new clevis pin, fitted in this job. */
  public static ClevisPinBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.CLEVIS_PIN, station)));
  }

  /** Starts the clevis pin that carries the tag. */
  public static ClevisPinBuilder builder(Tag tag) {
    return ClevisPinBuilder.builder(Blank.of(ClevisPin.class, tag));
  }
}
