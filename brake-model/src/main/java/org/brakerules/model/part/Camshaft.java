package org.brakerules.model.part;

import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;

/** The camshaft: S-shaped cam head, journals, spline and snap-ring groove. */
@PartRecord
public record Camshaft(
    Tag tag,
    @Means("the hand of the shaft as found, by its marking or its maker's list") Hand hand,
    @Means("crack in the cam head, a journal or the body") Sign crack,
    @Means("flat on the cam profile") Sign flat,
    @Means("groove worn across the cam profile") Sign groove,
    @Means("metal broken out of the cam profile") Sign spalling,
    @Means("dents in the cam profile where the rollers rest") Sign dents,
    @Means("rust on the cam head as found") Sign rust,
    @Means("pits the nail finds in the roller track once the rust is cleaned off")
        Sign pitsAfterCleaning,
    @Means("bright wear on the cam profile out to the nose") Sign wearToNose,
    @Means("a roller that has gone past the nose of the cam") Sign rollerPastNose,
    @Means("a roller that does not lie in the crook of the S with the brake released")
        Sign rollerOutOfCrook,
    @Means("wear on a journal that the eye or the nail finds") Sign journalWorn,
    @Means("step on a journal") Sign journalStepped,
    @Means("pits on a journal") Sign journalPitted,
    @Means("groove under a seal lip that catches the nail") Sign sealGroove,
    @Means("rounded edges on the snap-ring groove") Sign ringGrooveRounded,
    @Means("adjuster seen to move before the shaft does") Sign adjusterMovesFirst,
    @Means("twisted spline") Sign splineTwisted,
    @Means("chipped spline tooth") Sign splineChipped,
    @Means("crack at the spline") Sign splineCracked,
    @Means("bent shaft") Sign bent,
    @Means("shaft that wobbles when turned in new bushings") Sign wobblesInNewBushings,
    @Means("shaft that turns freely by hand both ways with the arm off") Sign turnsFreely,
    @Means("end play of the shaft with the adjuster and its ring fitted") @AtMost("1 in")
        Measurement<Length> endPlay,
    @Means("free movement between adjuster gear and spline") @AtMost("1 in")
        Measurement<Length> splineBacklash,
    @Means(
            "rotation of the cam with the linings on the drum: the angle from its lowest point to the roller")
        @AtMost("360 deg")
        Measurement<Angle> rotation,
    @Means("diameter of a journal") @AtMost("6 in") Measurement<Length> journalDiameter)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Camshaft {
    tag.require(PartKind.CAMSHAFT);
  }

  /** Starts a camshaft as it was found. */
  public static CamshaftBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.CAMSHAFT)));
  }

  /** Starts a new camshaft, fitted in this job. */
  public static CamshaftBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.CAMSHAFT)));
  }

  /** Starts the camshaft that carries the tag. */
  public static CamshaftBuilder builder(Tag tag) {
    return CamshaftBuilder.builder(Blank.of(Camshaft.class, tag));
  }
}
