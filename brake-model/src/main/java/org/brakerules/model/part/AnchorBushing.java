package org.brakerules.model.part;

import org.brakerules.model.reading.Station;

/** The bushing of a removable anchor pin. */
@PartRecord
public record AnchorBushing(
    Tag tag, @Means("worn bushing") Sign worn, @Means("bushing loose in its bore") Sign loose)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public AnchorBushing {
    tag.require(PartKind.ANCHOR_BUSHING);
  }

  /** Starts an anchor bushing as it was found. */
  public static AnchorBushingBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.ANCHOR_BUSHING, station)));
  }

  /** Starts a new anchor bushing, fitted in this job. */
  public static AnchorBushingBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.ANCHOR_BUSHING, station)));
  }

  /** Starts the anchor bushing that carries the tag. */
  public static AnchorBushingBuilder builder(Tag tag) {
    return AnchorBushingBuilder.builder(Blank.of(AnchorBushing.class, tag));
  }
}
