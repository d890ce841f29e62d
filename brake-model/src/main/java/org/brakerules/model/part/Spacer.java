package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/** A spacer or plain washer in the stack on the camshaft. */
@PartRecord
public record Spacer(
    Tag tag,
    @Means("distorted spacer") Sign distorted,
    @Means("corroded spacer") Sign corroded,
    @Means("spacer thinner on one side") Sign thinnerOnOneSide,
    @Means("spacers unlike those of the other side of the axle") Sign unlikeOtherSide,
    @Means("thickness of the spacer") @AtMost("6 in") Measurement<Length> thickness)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Spacer {
    tag.require(PartKind.SPACER);
  }

  /** Starts a spacer as it was found. */
  public static SpacerBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.SPACER, station)));
  }

  /** Starts a new spacer, fitted in this job. */
  public static SpacerBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.SPACER, station)));
  }

  /** Starts the spacer that carries the tag. */
  public static SpacerBuilder builder(Tag tag) {
    return SpacerBuilder.builder(Blank.of(Spacer.class, tag));
  }
}
