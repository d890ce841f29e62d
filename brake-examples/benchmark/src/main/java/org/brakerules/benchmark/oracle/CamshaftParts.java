package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.again;
import static org.brakerules.benchmark.oracle.Effect.clean;
import static org.brakerules.benchmark.oracle.Effect.hold;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Sentence.whenRenewed;
import static org.brakerules.benchmark.oracle.Subject.any;
import static org.brakerules.benchmark.oracle.Subject.fresh;
import static org.brakerules.benchmark.oracle.Subject.old;
import static org.brakerules.benchmark.oracle.Trade.join;
import static org.brakerules.model.part.PartKind.CAMSHAFT;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BRACKET;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BUSHING;
import static org.brakerules.model.part.PartKind.CAMSHAFT_SEAL;
import static org.brakerules.model.part.PartKind.CAM_ROLLER;
import static org.brakerules.model.part.PartKind.DRUM;
import static org.brakerules.model.part.PartKind.LINING;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.part.PartKind.SPIDER;
import static org.brakerules.model.reading.Station.HEAD_END;
import static org.brakerules.model.reading.Station.SPLINE_END;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** The camshaft and its bushings. */
final class CamshaftParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              CAMSHAFT,
              """
              shoes-off | always |  | layout.camshaft layout.camshaftHand hand endPlay splineBacklash
              wheel-on | always |  | adjusterMovesFirst
              wheel-on | with-limit |  | rotation
              drum-off | always | part.condition=as-found | rollerPastNose
              drum-off | always |  | rollerOutOfCrook
              shoes-off | always | part.condition=as-found | crack flat groove spalling dents rust
              shoes-off | always | part.condition=as-found | wearToNose
              shoes-off | on-demand |  | pitsAfterCleaning
              camshaft-out | always |  | turnsFreely
              camshaft-out | always | part.condition=as-found | bent journalWorn journalStepped
              camshaft-out | always | part.condition=as-found | journalPitted sealGroove splineTwisted
              camshaft-out | always | part.condition=as-found | splineChipped splineCracked
              camshaft-out | always | part.condition=as-found | ringGrooveRounded
              camshaft-out | on-demand |  | wobblesInNewBushings
              """),
          Point.read(
              CAMSHAFT_BUSHING,
              """
              shoes-off | always |  | layout.camshaft radialPlay
              camshaft-out | always |  | rough torn turnsInBore
              camshaft-out | always | layout.camshaft=tube/split | greaseHoleOutOfLine
              camshaft-out | always | part.condition=new | wrongDepth
              camshaft-out | on-demand | part.condition=as-found | wornToOneSide
              """));

  private static final List<Sentence> CAMSHAFT_SENTENCES =
      List.of(
          when(any(CAMSHAFT).missing(), replace("CAMSHAFT-400")),
          when(
              any(CAMSHAFT).where("part.hand=left; layout.camshaftHand=right"),
              hold("CAMSHAFT-320")),
          when(
              any(CAMSHAFT).where("part.hand=right; layout.camshaftHand=left"),
              hold("CAMSHAFT-330")),
          when(any(CAMSHAFT).seen("rollerOutOfCrook"), hold("CAMSHAFT-340")),
          when(any(CAMSHAFT).seen("wearToNose"), hold("CAMSHAFT-220")),
          when(any(CAMSHAFT).seen("rollerPastNose"), hold("CAMSHAFT-230")),
          when(
              any(CAMSHAFT).seen("rollerPastNose", "wearToNose"),
              replace("CAMSHAFT-240"),
              replace("CAMSHAFT-250").of(old(CAM_ROLLER)),
              look("CAMSHAFT-260", "thickness").of(old(LINING)),
              look("CAMSHAFT-270", "diameter").of(old(DRUM))),
          when(
              any(CAMSHAFT).beyond("rotation.max"),
              hold("CAMSHAFT-280"),
              look("CAMSHAFT-300", "thickness").of(old(LINING)),
              look("CAMSHAFT-310", "diameter").of(old(DRUM))),
          when(old(CAMSHAFT).beyond("rotation.max"), look("CAMSHAFT-290", "wearToNose")),
          when(any(CAMSHAFT).beyond("end-play.max"), adjust("CAMSHAFT-010")),
          when(any(CAMSHAFT).beyond("end-play.min"), adjust("CAMSHAFT-020")),
          when(any(CAMSHAFT).seen("crack"), replace("CAMSHAFT-180")),
          when(any(CAMSHAFT).seen("flat", "groove", "spalling"), replace("CAMSHAFT-150")),
          when(
              any(CAMSHAFT).seen("dents"),
              replace("CAMSHAFT-160"),
              replace("CAMSHAFT-170").of(old(CAM_ROLLER))),
          when(
              any(CAMSHAFT).seen("rust"),
              clean("CAMSHAFT-190"),
              look("CAMSHAFT-200", "pitsAfterCleaning")),
          when(any(CAMSHAFT).seen("pitsAfterCleaning"), replace("CAMSHAFT-210")),
          when(
              any(CAMSHAFT).seen("journalWorn", "journalStepped", "journalPitted"),
              replace("CAMSHAFT-130")),
          when(any(CAMSHAFT).seen("sealGroove"), replace("CAMSHAFT-140")),
          when(any(CAMSHAFT).seen("ringGrooveRounded"), replace("CAMSHAFT-030")),
          when(any(CAMSHAFT).seen("bent"), replace("CAMSHAFT-350")),
          when(any(CAMSHAFT).seen("wobblesInNewBushings"), replace("CAMSHAFT-360")),
          when(
              any(CAMSHAFT).notSeen("turnsFreely"),
              again("CAMSHAFT-380", "turnsFreely"),
              look("CAMSHAFT-390", "bent").of(CAMSHAFT_BRACKET)),
          when(
              any(CAMSHAFT).seen("splineTwisted", "splineChipped", "splineCracked"),
              replace("CAMSHAFT-050")),
          when(
              any(CAMSHAFT)
                  .seen("adjusterMovesFirst", "splineTwisted", "splineChipped", "splineCracked"),
              look("CAMSHAFT-070", "gearWorn").of(SLACK_ADJUSTER)),
          when(old(CAMSHAFT).seen("adjusterMovesFirst"), replace("CAMSHAFT-040")),
          when(
              fresh(CAMSHAFT).seen("adjusterMovesFirst"),
              again("CAMSHAFT-090", "adjusterMovesFirst")),
          when(old(CAMSHAFT).beyond("spline-backlash.max"), replace("CAMSHAFT-060")),
          when(
              fresh(CAMSHAFT).beyond("spline-backlash.max"),
              again("CAMSHAFT-100", "splineBacklash")),
          when(
              any(CAMSHAFT).beyond("spline-backlash.max"),
              look("CAMSHAFT-080", "gearWorn").of(SLACK_ADJUSTER)),
          when(fresh(CAMSHAFT), replace("CAMSHAFT-BUSHING-180").of(old(CAMSHAFT_BUSHING))),
          whenRenewed(
              CAMSHAFT,
              replace("CAMSHAFT-BUSHING-020").of(old(CAMSHAFT_BUSHING)),
              again("CAMSHAFT-BUSHING-150", "radialPlay").of(fresh(CAMSHAFT_BUSHING)),
              replace("CAMSHAFT-SEAL-020").of(old(CAMSHAFT_SEAL)),
              again("CAMSHAFT-SEAL-190", "cut").of(fresh(CAMSHAFT_SEAL))),
          when(any(CAMSHAFT).disturbed(), replace("CAMSHAFT-SEAL-010").of(old(CAMSHAFT_SEAL))));

  private static final List<Sentence> BUSHING_SENTENCES =
      List.of(
          when(any(CAMSHAFT_BUSHING).missing(), replace("CAMSHAFT-BUSHING-160")),
          when(
              any(CAMSHAFT_BUSHING).with(Contradicting::journal),
              again("CAMSHAFT-BUSHING-190", "radialPlay")),
          when(
              old(CAMSHAFT_BUSHING).beyond("radial-play.max"),
              replace("CAMSHAFT-BUSHING-010").of(old(CAMSHAFT_BUSHING)),
              look("CAMSHAFT-120", "journalWorn").of(old(CAMSHAFT))),
          when(
              fresh(CAMSHAFT_BUSHING).beyond("radial-play.max"),
              again("CAMSHAFT-BUSHING-140", "radialPlay").of(fresh(CAMSHAFT_BUSHING)),
              replace("CAMSHAFT-110").of(old(CAMSHAFT))),
          when(fresh(CAMSHAFT_BUSHING), look("CAMSHAFT-370", "wobblesInNewBushings").of(CAMSHAFT)),
          when(fresh(CAMSHAFT_BUSHING).seen("wornToOneSide"), replace("CAMSHAFT-BUSHING-170")),
          when(
              old(CAMSHAFT_BUSHING).seen("rough", "torn"),
              replace("CAMSHAFT-BUSHING-030").of(old(CAMSHAFT_BUSHING))),
          when(fresh(CAMSHAFT_BUSHING).seen("rough", "torn"), replace("CAMSHAFT-BUSHING-040")),
          when(any(CAMSHAFT_BUSHING).seen("turnsInBore"), replace("CAMSHAFT-BUSHING-050")),
          when(
              any(CAMSHAFT_BUSHING).seen("turnsInBore").at(SPLINE_END),
              look("CAMSHAFT-BUSHING-080", "bushingBoreWorn").of(CAMSHAFT_BRACKET)),
          when(
              any(CAMSHAFT_BUSHING).seen("turnsInBore").at(HEAD_END).unless("layout.camshaft=tube"),
              look("CAMSHAFT-BUSHING-070", "bushingBoreWorn").of(SPIDER)),
          when(
              any(CAMSHAFT_BUSHING)
                  .seen("turnsInBore")
                  .at(HEAD_END)
                  .unless("layout.camshaft=split"),
              look("CAMSHAFT-BUSHING-060", "bushingBoreWorn").of(CAMSHAFT_BRACKET)),
          when(
              fresh(CAMSHAFT_BUSHING).seen("greaseHoleOutOfLine", "wrongDepth"),
              adjust("CAMSHAFT-BUSHING-120")),
          when(
              old(CAMSHAFT_BUSHING).seen("greaseHoleOutOfLine", "wrongDepth"),
              replace("CAMSHAFT-BUSHING-130")),
          whenRenewed(
              CAMSHAFT_BUSHING,
              replace("CAMSHAFT-SEAL-030").of(old(CAMSHAFT_SEAL)),
              again("CAMSHAFT-SEAL-200", "cut").of(fresh(CAMSHAFT_SEAL))));

  static final Group GROUP = new Group(POINTS, join(CAMSHAFT_SENTENCES, BUSHING_SENTENCES));

  private CamshaftParts() {}
}
