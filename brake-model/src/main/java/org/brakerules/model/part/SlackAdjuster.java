package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.reading.Measurement;

/** The slack adjuster. */
@PartRecord
public record SlackAdjuster(
    Tag tag,
    @Means("lock sleeve that does not spring back") Sign lockSleeveStuck,
    @Means("rounded adjusting hex") Sign hexRounded,
    @Means("scored pawl teeth") Sign teethScored,
    @Means("automatic adjuster known to have been turned by hand") Sign turnedByHand,
    @Means("adjuster facing the wrong way") Sign facingWrongWay,
    @Means("clevis holes out of line with the rod fully back") Sign holesOutOfLine,
    @Means("torn boot") Sign bootTorn,
    @Means("rust or dirt inside") Sign dirtInside,
    @Means("adjuster that takes no grease") Sign takesNoGrease,
    @Means("worn or missing arm bushing") Sign armBushingWorn,
    @Means("worn gear spline") Sign gearWorn,
    @Means("adjuster loose on the spline") Sign looseOnSpline,
    @Means("kind of adjuster unlike that across the axle") Sign kindUnlikePartner,
    @Means("arm length unlike that across the axle") Sign lengthUnlikePartner,
    @Means("adjuster not set as its own gauge, template or window shows") Sign setUnlikeGauge,
    @Means("adjusting hex that moves while the brake is applied") Sign hexMoves,
    @Means("torque over one gear turn in the free direction") @AtMost("1000 lbf.in")
        Measurement<Torque> freeTorque,
    @Means("torque at which the clutch slips in the release direction") @AtMost("1000 lbf.ft")
        Measurement<Torque> clutchTorque,
    @Means("effective length of the arm") @AtMost("20 in") Measurement<Length> armLength,
    @Means("movement at the clevis hole with the cam held") @AtMost("4 in")
        Measurement<Length> armMovement)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public SlackAdjuster {
    tag.require(PartKind.SLACK_ADJUSTER);
  }

  /** Starts a slack adjuster as it was found. */
  public static SlackAdjusterBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.SLACK_ADJUSTER)));
  }

  /** Starts a new slack adjuster, fitted in this job. */
  public static SlackAdjusterBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.SLACK_ADJUSTER)));
  }

  /** Starts the slack adjuster that carries the tag. */
  public static SlackAdjusterBuilder builder(Tag tag) {
    return SlackAdjusterBuilder.builder(Blank.of(SlackAdjuster.class, tag));
  }
}
