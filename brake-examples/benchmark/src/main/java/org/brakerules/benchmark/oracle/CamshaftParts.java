package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.again;
import static org.brakerules.benchmark.oracle.Effect.clean;
import static org.brakerules.benchmark.oracle.Effect.hold;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
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
import static org.brakerules.model.part.PartKind.GREASE_FITTING;
import static org.brakerules.model.part.PartKind.LINING;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.part.PartKind.SPIDER;
import static org.brakerules.model.reading.Station.ADJUSTER;
import static org.brakerules.model.reading.Station.HEAD_END;
import static org.brakerules.model.reading.Station.SPLINE_END;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;
import org.brakerules.model.layout.CamshaftLayout;

/** Camshaft, bushings, seals, the bracket that carries them, and the grease fittings. */
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
              """),
          Point.read(
              CAMSHAFT_SEAL,
              """
              camshaft-out | always |  | layout.camshaft kind cut
              camshaft-out | always | part.kind=one-lip/main-and-dust-lip/unknown | lip
              camshaft-out | on-demand | part.kind=one-lip/main-and-dust-lip/unknown | lipUnlikeMakerShows
              camshaft-out | always | part.condition=as-found | worn
              """),
          Point.read(
              CAMSHAFT_BRACKET,
              """
              wheel-on | always | part.condition=as-found | cracked rustedThrough bent
              wheel-on | always |  | loose
              camshaft-out | always | part.condition=as-found | sealBoreWorn
              camshaft-out | on-demand |  | bushingBoreWorn
              """),
          Point.read(
              GREASE_FITTING,
              """
              wheel-on | always | part.condition=as-found | blocked hardGrease
              wheel-on | always |  | takesNoGrease
              wheel-on | on-demand |  | purgeSideDry
              """));

  private static final List<Figure> FIGURES =
      join(
          Figure.read(
              CAMSHAFT,
              """
              end-play.max | endPlay | at most 0.030 in | spline-end dial-indicator feeler-gauge | layout.camshaft=tube/split |
              end-play.min | endPlay | at least 0.005 in | spline-end dial-indicator feeler-gauge | layout.camshaft=tube/split |
              spline-backlash.max | splineBacklash | at most 0.020 in | spline-pitch-radius dial-indicator |  |
              rotation.max | rotation | at most 120 deg | protractor |  | only:quebec law:quebec
              """),
          Figure.read(
              CAMSHAFT_BUSHING,
              """
              radial-play.max | radialPlay | at most 0.020 in | dial-indicator-lifted-by-hand bore-less-journal | layout.camshaft=tube/split |
              """));

  /** Both bushings of a tube sit in it; the one at the spline always sits in tube or bracket. */
  private static final Subject IN_BRACKET =
      any(CAMSHAFT_BUSHING)
          .with(
              (bench, end, part) ->
                  part.part().station() == SPLINE_END
                      || end.layout().camshaft() == CamshaftLayout.TUBE);

  private static final List<Sentence> CAMSHAFT_SENTENCES =
      List.of(
          when(any(CAMSHAFT).missing(), replace()),
          when(any(CAMSHAFT).where("part.hand=left; layout.camshaftHand=right"), hold()),
          when(any(CAMSHAFT).where("part.hand=right; layout.camshaftHand=left"), hold()),
          when(any(CAMSHAFT).seen("rollerOutOfCrook"), hold()),
          when(
              any(CAMSHAFT).seen("rollerPastNose", "wearToNose"),
              hold(),
              replace(),
              replace().of(old(CAM_ROLLER)),
              look("thickness").of(old(LINING)),
              look("diameter").of(old(DRUM))),
          when(
              any(CAMSHAFT).beyond("rotation.max"),
              hold(),
              look("wearToNose"),
              look("thickness").of(old(LINING)),
              look("diameter").of(old(DRUM))),
          when(any(CAMSHAFT).beyond("end-play.max", "end-play.min"), adjust()),
          when(any(CAMSHAFT).seen("crack", "flat", "groove", "spalling"), replace()),
          when(any(CAMSHAFT).seen("dents"), replace(), replace().of(old(CAM_ROLLER))),
          when(any(CAMSHAFT).seen("rust"), look("pitsAfterCleaning")),
          when(any(CAMSHAFT).seen("rust").notSeen("pitsAfterCleaning"), clean()),
          when(any(CAMSHAFT).seen("pitsAfterCleaning"), replace()),
          when(
              any(CAMSHAFT).seen("journalWorn", "journalStepped", "journalPitted", "sealGroove"),
              replace()),
          when(any(CAMSHAFT).seen("ringGrooveRounded"), replace()),
          when(any(CAMSHAFT).seen("bent", "wobblesInNewBushings"), replace()),
          when(any(CAMSHAFT).notSeen("turnsFreely"), again(), look("bent").of(CAMSHAFT_BRACKET)),
          when(
              any(CAMSHAFT).seen("splineTwisted", "splineChipped", "splineCracked"),
              replace(),
              look("gearWorn").of(SLACK_ADJUSTER)),
          when(
              old(CAMSHAFT).seen("adjusterMovesFirst"),
              replace(),
              look("gearWorn").of(SLACK_ADJUSTER)),
          when(
              any(CAMSHAFT).beyond("spline-backlash.max"),
              replace().of(old(CAMSHAFT)),
              again().of(fresh(CAMSHAFT)),
              look("gearWorn").of(SLACK_ADJUSTER)),
          when(
              fresh(CAMSHAFT).seen("adjusterMovesFirst"),
              again(),
              look("gearWorn").of(SLACK_ADJUSTER)),
          when(any(CAMSHAFT).renewed(), replace().of(old(CAMSHAFT_BUSHING))),
          when(fresh(CAMSHAFT), replace().of(old(CAMSHAFT_BUSHING))),
          when(any(CAMSHAFT).renewed(), again().of(fresh(CAMSHAFT_BUSHING))),
          when(any(CAMSHAFT).renewed(), replace().of(old(CAMSHAFT_SEAL))),
          when(any(CAMSHAFT).renewed(), again().of(fresh(CAMSHAFT_SEAL))),
          when(any(CAMSHAFT).disturbed(), replace().of(old(CAMSHAFT_SEAL))));

  private static final List<Sentence> BUSHING_SENTENCES =
      List.of(
          when(any(CAMSHAFT_BUSHING).missing(), replace()),
          when(any(CAMSHAFT_BUSHING).with(Contradicting::journal), again()),
          when(
              old(CAMSHAFT_BUSHING).beyond("radial-play.max"),
              replace().of(old(CAMSHAFT_BUSHING)),
              look("journalWorn").of(old(CAMSHAFT)),
              look("journalStepped").of(old(CAMSHAFT)),
              look("journalPitted").of(old(CAMSHAFT))),
          when(
              fresh(CAMSHAFT_BUSHING).beyond("radial-play.max"),
              again().of(fresh(CAMSHAFT_BUSHING)),
              replace().of(old(CAMSHAFT))),
          when(fresh(CAMSHAFT_BUSHING), look("wobblesInNewBushings").of(CAMSHAFT)),
          when(fresh(CAMSHAFT_BUSHING).seen("wornToOneSide"), replace()),
          when(old(CAMSHAFT_BUSHING).seen("rough", "torn"), replace().of(old(CAMSHAFT_BUSHING))),
          when(fresh(CAMSHAFT_BUSHING).seen("rough", "torn"), replace()),
          when(any(CAMSHAFT_BUSHING).seen("turnsInBore"), replace()),
          when(
              any(CAMSHAFT_BUSHING).seen("turnsInBore").where("layout.camshaft=tube"),
              look("bushingBoreWorn").of(CAMSHAFT_BRACKET)),
          when(
              any(CAMSHAFT_BUSHING).seen("turnsInBore").at(SPLINE_END),
              look("bushingBoreWorn").of(CAMSHAFT_BRACKET)),
          when(
              any(CAMSHAFT_BUSHING)
                  .seen("turnsInBore")
                  .at(HEAD_END)
                  .with((bench, end, part) -> end.layout().camshaft() != CamshaftLayout.TUBE),
              look("bushingBoreWorn").of(SPIDER)),
          when(
              any(CAMSHAFT_BUSHING)
                  .seen("turnsInBore")
                  .at(HEAD_END)
                  .with((bench, end, part) -> end.layout().camshaft() != CamshaftLayout.SPLIT),
              look("bushingBoreWorn").of(CAMSHAFT_BRACKET)),
          when(fresh(CAMSHAFT_BUSHING).seen("greaseHoleOutOfLine", "wrongDepth"), adjust()),
          when(old(CAMSHAFT_BUSHING).seen("greaseHoleOutOfLine", "wrongDepth"), replace()),
          when(any(CAMSHAFT_BUSHING).renewed(), replace().of(old(CAMSHAFT_SEAL))),
          when(any(CAMSHAFT_BUSHING).renewed(), again().of(fresh(CAMSHAFT_SEAL))));

  private static final List<Sentence> SEAL_SENTENCES =
      List.of(
          when(any(CAMSHAFT_SEAL).missing(), replace()),
          when(any(CAMSHAFT_SEAL).seen("cut", "worn"), replace()),
          when(old(CAMSHAFT_SEAL).where("part.kind=o-ring").disturbed(), replace()),
          when(fresh(CAMSHAFT_SEAL).with(CamshaftParts::isReversed), replace()),
          when(
              old(CAMSHAFT_SEAL).with(CamshaftParts::isReversed),
              replace(),
              look("greaseSoaked").of(old(LINING)),
              look("soaked").of(old(DRUM))),
          when(
              fresh(CAMSHAFT_SEAL).with(CamshaftParts::isAsMakerShows),
              look("lipUnlikeMakerShows")),
          when(
              any(CAMSHAFT_SEAL).seen("lipUnlikeMakerShows").with(CamshaftParts::hasLip),
              replace()));

  private static final List<Sentence> BRACKET_AND_FITTING_SENTENCES =
      List.of(
          when(any(CAMSHAFT_BRACKET).missing(), replace()),
          when(
              any(CAMSHAFT_BRACKET)
                  .seen("cracked", "bent", "rustedThrough", "loose", "sealBoreWorn"),
              replace()),
          when(any(CAMSHAFT_BRACKET).seen("bushingBoreWorn"), replace(), replace().of(IN_BRACKET)),
          when(any(CAMSHAFT_BRACKET).renewed(), replace().of(IN_BRACKET)),
          when(any(GREASE_FITTING).missing(), replace()),
          when(any(GREASE_FITTING).seen("blocked"), clean()),
          when(any(GREASE_FITTING).seen("takesNoGrease"), again()),
          when(
              any(GREASE_FITTING).seen("takesNoGrease").where("part.station=tube"),
              look("greaseHoleOutOfLine").of(CAMSHAFT_BUSHING),
              look("lip").of(old(CAMSHAFT_SEAL).at(SPLINE_END))),
          when(
              any(GREASE_FITTING).seen("takesNoGrease"),
              look("greaseHoleOutOfLine").of(CAMSHAFT_BUSHING).atSameStation(),
              look("lip").of(old(CAMSHAFT_SEAL)).atSameStation()),
          when(
              any(GREASE_FITTING).seen("takesNoGrease").at(ADJUSTER),
              look("takesNoGrease").of(SLACK_ADJUSTER)),
          when(any(GREASE_FITTING).seen("hardGrease"), clean()),
          when(any(GREASE_FITTING).seen("purgeSideDry"), again()));

  static final Group GROUP =
      new Group(
          POINTS,
          FIGURES,
          join(
              CAMSHAFT_SENTENCES,
              BUSHING_SENTENCES,
              SEAL_SENTENCES,
              BRACKET_AND_FITTING_SENTENCES));

  private CamshaftParts() {}

  /** Every lip of a tube faces the adjuster, and so does every lip at a split layout's spider. */
  private static boolean isReversed(Bench bench, WheelEndView end, Facts part) {
    boolean ruled =
        end.layout().camshaft() == CamshaftLayout.TUBE
            || (end.layout().camshaft() == CamshaftLayout.SPLIT
                && part.part().station() == HEAD_END);
    return ruled && hasLip(bench, end, part) && part.state("lip").equals("toward-head");
  }

  private static boolean hasLip(Bench bench, WheelEndView end, Facts part) {
    return !part.state("kind").equals("o-ring");
  }

  /** At a split layout's bracket and in a closed layout the maker alone says. */
  private static boolean isAsMakerShows(Bench bench, WheelEndView end, Facts part) {
    boolean byMaker =
        end.layout().camshaft() == CamshaftLayout.CLOSED
            || (end.layout().camshaft() == CamshaftLayout.SPLIT
                && part.part().station() == SPLINE_END);
    return byMaker && hasLip(bench, end, part);
  }
}
