package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;

/** The brake drum. */
@PartRecord
public record Drum(
    Tag tag,
    @Means("bell-mouthed bore") Sign bellMouthed,
    @Means("scored bore") Sign scored,
    @Means("short fine heat checks") Sign fineHeatChecks,
    @Means("heat checks joined, caught by the nail, or running to the edge") Sign heatChecksJoined,
    @Means("check that opens when the brake is applied") Sign opensOnApplication,
    @Means("crack seen from outside, at the flange or at the bolt circle") Sign outsideCrack,
    @Means("piece missing") Sign pieceMissing,
    @Means("blued bore") Sign blue,
    @Means("raised hard spots") Sign hardSpots,
    @Means("faint spots") Sign faintSpots,
    @Means("drum soaked with oil or grease") Sign soaked,
    @Means("protective oil of a new drum not washed off") Sign protectiveOil,
    @Means("rust, paint or burr on pilot or mounting face") Sign faceNotClean,
    @Means("drum not seated on its pilot") Sign notSeated,
    @Means("hot spots at equal distances or on one side") Sign hotSpotsSpaced,
    @Means("bore grooved in rings that match the rivets or bolts") Sign groovedInRings,
    @Means("wheel that drags or drum that runs hot") Sign drags,
    @Means("inside diameter") @AtMost("40 in") Measurement<Length> diameter,
    @Means(
            "inside diameter at which the bore would clean up, from the deepest score or the widest place")
        @AtMost("40 in")
        Measurement<Length> cleanUpDiameter,
    @Means("depth of the deepest score") @AtMost("1 in") Measurement<Length> scoreDepth,
    @Means("difference of diameters at four places") @AtMost("1 in") Measurement<Length> outOfRound,
    @Means("difference of diameters between open and closed side") @AtMost("1 in")
        Measurement<Length> taper,
    @Means("total indicated run-out") @AtMost("1 in") Measurement<Length> runOut)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Drum {
    tag.require(PartKind.DRUM);
  }

  /** Starts a drum as it was found. */
  public static DrumBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.DRUM)));
  }

  /** Starts a new drum, fitted in this job. */
  public static DrumBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.DRUM)));
  }

  /** Starts the drum that carries the tag. */
  public static DrumBuilder builder(Tag tag) {
    return DrumBuilder.builder(Blank.of(Drum.class, tag));
  }
}
