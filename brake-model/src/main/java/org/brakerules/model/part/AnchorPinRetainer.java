package org.brakerules.model.part;

import org.brakerules.model.reading.Station;

/** Lock, ring or felt that keeps an anchor pin in place. */
@PartRecord
public record AnchorPinRetainer(Tag tag, @Means("worn lock, ring or felt") Sign worn)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public AnchorPinRetainer {
    tag.require(PartKind.ANCHOR_PIN_RETAINER);
  }

  /** Starts an anchor pin retainer as it was found. */
  public static AnchorPinRetainerBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.ANCHOR_PIN_RETAINER, station)));
  }

  /** Starts a new anchor pin retainer, fitted in this job. */
  public static AnchorPinRetainerBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.ANCHOR_PIN_RETAINER, station)));
  }

  /** Starts the anchor pin retainer that carries the tag. */
  public static AnchorPinRetainerBuilder builder(Tag tag) {
    return AnchorPinRetainerBuilder.builder(Blank.of(AnchorPinRetainer.class, tag));
  }
}
