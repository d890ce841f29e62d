package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/** A shim washer that sets the end play. */
@PartRecord
public record Shim(
    Tag tag,
    @Means("distorted shim") Sign distorted,
    @Means("corroded shim") Sign corroded,
    @Means("shim thinner on one side") Sign thinnerOnOneSide,
    @Means("thickness of the shim") @AtMost("0.5 in") Measurement<Length> thickness)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Shim {
    tag.require(PartKind.SHIM);
  }

  /** Starts a shim as it was found. */
  public static ShimBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.SHIM, station)));
  }

  /** Starts a new shim, fitted in this job. */
  public static ShimBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.SHIM, station)));
  }

  /** Starts the shim that carries the tag. */
  public static ShimBuilder builder(Tag tag) {
    return ShimBuilder.builder(Blank.of(Shim.class, tag));
  }
}
