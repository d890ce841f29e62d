package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/**
 * A snap ring of the camshaft: at the spline end the adjuster ring, at the head end the spider
 * ring.
 */
@PartRecord
public record SnapRing(
    Tag tag,
    @Means("ring found out of its groove") Sign outOfGroove,
    @Means("gap between washer and ring") @AtMost("1 in") Measurement<Length> gap)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public SnapRing {
    tag.require(PartKind.SNAP_RING);
  }

  /** Starts a snap ring as it was found. */
  public static SnapRingBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.SNAP_RING, station)));
  }

  /** Starts a new snap ring, fitted in this job. */
  public static SnapRingBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.SNAP_RING, station)));
  }

  /** Starts the snap ring that carries the tag. */
  public static SnapRingBuilder builder(Tag tag) {
    return SnapRingBuilder.builder(Blank.of(SnapRing.class, tag));
  }
}
