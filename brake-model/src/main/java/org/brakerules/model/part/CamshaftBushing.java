package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/** One of the two bushings that carry the camshaft: at the head end or at the spline end. */
@PartRecord
public record CamshaftBushing(
    Tag tag,
    @Means("rough bearing surface") Sign rough,
    @Means("torn or broken-out bearing surface") Sign torn,
    @Means("bushing that turns in its bore") Sign turnsInBore,
    @Means("grease hole out of line with the fitting") Sign greaseHoleOutOfLine,
    @Means("bushing not at the depth its maker shows") Sign wrongDepth,
    @Means("bearing surface worn to one side") Sign wornToOneSide,
    @Means("radial play of the camshaft in the bushing, the whole movement of the dial")
        @AtMost("0.5 in")
        Measurement<Length> radialPlay,
    @Means("inside diameter of the bushing") @AtMost("6 in") Measurement<Length> bore)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public CamshaftBushing {
    tag.require(PartKind.CAMSHAFT_BUSHING);
  }

  /** Starts a camshaft bushing as it was found. */
  public static CamshaftBushingBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.CAMSHAFT_BUSHING, station)));
  }

  /** Starts a new camshaft bushing, fitted in this job. */
  public static CamshaftBushingBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.CAMSHAFT_BUSHING, station)));
  }

  /** Starts the camshaft bushing that carries the tag. */
  public static CamshaftBushingBuilder builder(Tag tag) {
    return CamshaftBushingBuilder.builder(Blank.of(CamshaftBushing.class, tag));
  }
}
