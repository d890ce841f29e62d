package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/** The lining of one shoe, a strip or two blocks. */
@PartRecord
public record Lining(
    Tag tag,
    @Means("loose lining") Sign loose,
    @Means("broken lining") Sign broken,
    @Means("loose rivet or bolt") Sign fastenerLoose,
    @Means("rivet or bolt that touches the drum") Sign fastenerTouchesDrum,
    @Means("fine tight surface cracks") Sign fineCracks,
    @Means("extremely uneven wear") Sign extremelyUneven,
    @Means("lining soaked with oil") Sign oilSoaked,
    @Means("lining soaked with grease") Sign greaseSoaked,
    @Means("glazed or hard surface") Sign glazed,
    @Means("thick and thin ends that differ plainly") Sign endsDiffer,
    @Means("thick and thin edges that differ plainly") Sign edgesDiffer,
    @Means("lining lifted from the shoe table") Sign liftedFromTable,
    @Means("cam-end and anchor-end blocks exchanged") Sign blocksExchanged,
    @Means("two friction codes on this wheel or across the axle") Sign codesDiffer,
    @Means("thickness of the lining") @AtMost("3 in") Measurement<Length> thickness,
    @Means("depth of the deepest crack as a share of the lining left") @AtMost("100 %")
        Measurement<Share> crackDepth)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Lining {
    tag.require(PartKind.LINING);
  }

  /** Starts a lining as it was found. */
  public static LiningBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.LINING, station)));
  }

  /** Starts a new lining, fitted in this job. */
  public static LiningBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.LINING, station)));
  }

  /** Starts the lining that carries the tag. */
  public static LiningBuilder builder(Tag tag) {
    return LiningBuilder.builder(Blank.of(Lining.class, tag));
  }
}
