package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/** An anchor pin, fixed in the spider or removable. */
@PartRecord
public record AnchorPin(
    Tag tag,
    @Means("groove in the bearing surface") Sign groove,
    @Means("step in the bearing surface") Sign step,
    @Means("pit in the bearing surface") Sign pit,
    @Means("bent pin") Sign bent,
    @Means("fixed pin loose in the spider") Sign looseInSpider,
    @Means("pin seized, so that the shoe does not swing by hand") Sign seized,
    @Means("depth of the groove below the original surface") @AtMost("1 in")
        Measurement<Length> grooveDepth)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public AnchorPin {
    tag.require(PartKind.ANCHOR_PIN);
  }

  /** Starts an anchor pin as it was found. */
  public static AnchorPinBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.ANCHOR_PIN, station)));
  }

  /** Starts a new anchor pin, fitted in this job. */
  public static AnchorPinBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.ANCHOR_PIN, station)));
  }

  /** Starts the anchor pin that carries the tag. */
  public static AnchorPinBuilder builder(Tag tag) {
    return AnchorPinBuilder.builder(Blank.of(AnchorPin.class, tag));
  }
}
