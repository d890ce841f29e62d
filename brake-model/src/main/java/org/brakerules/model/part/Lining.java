package org.brakerules.model.part;

import java.util.regex.Pattern;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/** The lining of one shoe, a strip or two blocks. */
@PartRecord
public record Lining(
    Tag tag,
    @Means("friction code on the edge, two letters as marked, such as FF") String frictionCode,
    @Means("loose lining") Sign loose,
    @Means("broken lining") Sign broken,
    @Means("loose rivet or bolt") Sign fastenerLoose,
    @Means("rivet or bolt that touches the drum") Sign fastenerTouchesDrum,
    @Means("fine tight surface cracks") Sign fineCracks,
    @Means("extremely uneven wear") Sign extremelyUneven,
    @Means("lining soaked with oil") Sign oilSoaked,
    @Means("lining soaked with grease") Sign greaseSoaked,
    @Means("glazed or hard surface") Sign glazed,
    @Means("one edge thinner than the other along its length") Sign edgesDiffer,
    @Means("lining lifted from the shoe table") Sign liftedFromTable,
    @Means("cam-end and anchor-end blocks exchanged") Sign blocksExchanged,
    @Means("two friction codes on this wheel or across the axle") Sign codesDiffer,
    @Means("cam end much thinner than the anchor end") Sign camEndThin,
    @Means("anchor end thinner than the cam end") Sign anchorEndThin,
    @Means("one corner thin, worn on the slant") Sign cornerThin,
    @Means("much thinner than the lining of the other shoe") Sign thinnerThanMate,
    @Means("worn or drag-marked while the other shoe is not") Sign onlyThisWorn,
    @Means("worn plainly unlike the linings across the axle") Sign unlikePartner,
    @Means("worn far more than the linings of the other axles") Sign axleWornMore,
    @Means("ridge on the edge, or an edge that does not touch the drum") Sign edgeRidge,
    @Means("contact marks in places only") Sign touchesInPlaces,
    @Means("lining worn to its wear indicator") Sign wornToIndicator,
    @Means("crack that is more than a fine surface crack") Sign cracked,
    @Means("crack at the bolt or rivet holes") Sign crackedAtBoltHoles,
    @Means("oversize lining in a standard drum, or standard lining in a turned drum")
        Sign sizeUnlikeDrum,
    @Means("brake that grabs") Sign grabs,
    @Means("thickness of the lining") @AtMost("3 in") Measurement<Length> thickness,
    @Means("lining left over the rivets or bolts") @AtMost("3 in") Measurement<Length> overFastener,
    @Means("depth of the deepest crack as a share of the lining left") @AtMost("100 %")
        Measurement<Share> crackDepth)
    implements Part {

  private static final Pattern CODE = Pattern.compile("|[A-Z]{2}");

  /**
   * Refuses a tag of another kind of part, and a friction code that is not two letters.
   *
   * @throws IllegalArgumentException if the tag or the code is refused
   */
  public Lining {
    tag.require(PartKind.LINING);
    if (!CODE.matcher(frictionCode).matches()) {
      throw new IllegalArgumentException(
          "No friction code: \"" + frictionCode + "\"; write its two letters, such as FF");
    }
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
