package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/** A brake shoe without its lining. */
@PartRecord
public record Shoe(
    Tag tag,
    @Means("cracked web") Sign webCracked,
    @Means("bent web") Sign webBent,
    @Means("cracked table") Sign tableCracked,
    @Means("bent table") Sign tableBent,
    @Means("broken weld") Sign brokenWeld,
    @Means("loose rivets") Sign looseRivets,
    @Means("rivet holes worn long") Sign longRivetHoles,
    @Means("rust between table and lining") Sign rustUnderLining,
    @Means("pitted table") Sign tablePitted,
    @Means("roller pocket worn on one web only") Sign pocketWornOneWeb,
    @Means("anchor end worn on one web only") Sign anchorEndWornOneWeb,
    @Means("type, width or number unlike that of its mate or its axle partner") Sign unlikeMate,
    @Means("distance from anchor centre to roller-recess centre") @AtMost("40 in")
        Measurement<Length> span,
    @Means("diameter of the roller recess") @AtMost("4 in") Measurement<Length> rollerRecess)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Shoe {
    tag.require(PartKind.SHOE);
  }

  /** Starts a shoe as it was found. */
  public static ShoeBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.SHOE, station)));
  }

  /** Starts a new shoe, fitted in this job. */
  public static ShoeBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.SHOE, station)));
  }

  /** Starts the shoe that carries the tag. */
  public static ShoeBuilder builder(Tag tag) {
    return ShoeBuilder.builder(Blank.of(Shoe.class, tag));
  }
}
