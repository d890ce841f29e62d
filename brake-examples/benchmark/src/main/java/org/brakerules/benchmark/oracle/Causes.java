package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Subject.any;
import static org.brakerules.benchmark.oracle.Subject.fresh;
import static org.brakerules.benchmark.oracle.Subject.old;
import static org.brakerules.benchmark.oracle.Trade.join;
import static org.brakerules.model.part.PartKind.ANCHOR_PIN;
import static org.brakerules.model.part.PartKind.ANCHOR_PIN_RETAINER;
import static org.brakerules.model.part.PartKind.CAMSHAFT;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BRACKET;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BUSHING;
import static org.brakerules.model.part.PartKind.CAMSHAFT_SEAL;
import static org.brakerules.model.part.PartKind.CAM_ROLLER;
import static org.brakerules.model.part.PartKind.CHAMBER;
import static org.brakerules.model.part.PartKind.CLEVIS_PIN;
import static org.brakerules.model.part.PartKind.DRUM;
import static org.brakerules.model.part.PartKind.DUST_SHIELD;
import static org.brakerules.model.part.PartKind.GREASE_FITTING;
import static org.brakerules.model.part.PartKind.HUB;
import static org.brakerules.model.part.PartKind.LINING;
import static org.brakerules.model.part.PartKind.PUSH_ROD;
import static org.brakerules.model.part.PartKind.RETURN_SPRING;
import static org.brakerules.model.part.PartKind.ROLLER_CLIP;
import static org.brakerules.model.part.PartKind.SHOE;
import static org.brakerules.model.part.PartKind.SHOE_RETAINING_SPRING;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.part.PartKind.SNAP_RING;
import static org.brakerules.model.part.PartKind.SPACER;
import static org.brakerules.model.part.PartKind.SPIDER;
import static org.brakerules.model.part.PartKind.SPRING_BRAKE;
import static org.brakerules.model.part.PartKind.WHEEL_SEAL;
import static org.brakerules.model.reading.Station.HEAD_END;
import static org.brakerules.model.reading.Station.LARGE;
import static org.brakerules.model.reading.Station.SMALL;
import static org.brakerules.model.reading.Station.SPLINE_END;
import static org.brakerules.model.reading.Station.TUBE;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** From a pattern to its causes, which never condemn: each asks for looks. */
final class Causes {

  private static final String AUTOMATIC = "layout.adjuster=automatic-pawl/automatic-clutch";

  /** The camshaft seal that keeps the grease from the drum, and the one that lets it out. */
  private static final Subject LIP_SEAL =
      old(CAMSHAFT_SEAL).where("part.kind=one-lip/main-and-dust-lip");

  private static final List<Sentence> LINING_PATTERNS =
      List.of(
          when(
              any(LINING).seen("edgesDiffer"),
              look("taper").of(old(DRUM)),
              look("radialPlay").of(any(CAMSHAFT_BUSHING).at(HEAD_END)),
              look("faceOutOfSquare").of(SPIDER),
              look("webBent").of(old(SHOE)).atSameStation(),
              look("tableBent").of(old(SHOE)).atSameStation(),
              look("looseAsFound").of(old(HUB))),
          when(
              any(LINING).seen("cornerThin"),
              look("webBent").of(old(SHOE)).atSameStation(),
              look("off").of(old(SHOE_RETAINING_SPRING)),
              look("broken").of(old(SHOE_RETAINING_SPRING)),
              look("cocked").of(old(CAM_ROLLER)).atSameStation(),
              look("pocketWornOneWeb").of(old(SHOE)).atSameStation(),
              look("anchorEndWornOneWeb").of(old(SHOE)).atSameStation(),
              look("groove").of(old(ANCHOR_PIN)).atSameStation()),
          when(
              any(LINING).seen("camEndThin"),
              look("freeStroke").of(CHAMBER),
              look("diameter").of(old(DRUM)),
              look("sizeUnlikeDrum"),
              look("span").of(old(SHOE)).atSameStation()),
          when(
              any(LINING).seen("anchorEndThin"),
              look("groove").of(old(ANCHOR_PIN)).atSameStation(),
              look("freeStroke").of(CHAMBER),
              look("span").of(old(SHOE)).atSameStation(),
              look("seized").of(old(ANCHOR_PIN)),
              look("stretched").of(old(RETURN_SPRING))),
          when(
              any(LINING).seen("thinnerThanMate"),
              look("radialPlay").of(any(CAMSHAFT_BUSHING).at(HEAD_END)),
              look("seized").of(old(ANCHOR_PIN)),
              look("stretched").of(old(RETURN_SPRING)),
              look("codesDiffer"),
              look("seizedAsFound").of(old(CAM_ROLLER)),
              look("flat").of(old(CAM_ROLLER))),
          when(
              any(LINING).seen("onlyThisWorn"),
              look("off").of(old(SHOE_RETAINING_SPRING)),
              look("broken").of(old(SHOE_RETAINING_SPRING)),
              look("stretched").of(old(RETURN_SPRING)),
              look("turnsFreely").of(CAMSHAFT)),
          when(
              any(LINING).seen("unlikePartner"),
              look("codesDiffer"),
              look("turnsFreely").of(CAMSHAFT),
              look("pressureUnlikePartner").of(CHAMBER),
              look("hexMoves").of(any(SLACK_ADJUSTER).where(AUTOMATIC)),
              look("appliedStroke").of(CHAMBER).acrossAxle(),
              look("hexMoves").of(any(SLACK_ADJUSTER).where(AUTOMATIC)).acrossAxle(),
              look("turnsFreely").of(CAMSHAFT).acrossAxle()),
          when(
              any(LINING).seen("axleWornMore"),
              look("sizeUnlikeList").of(CHAMBER),
              look("pressureUnlikeOtherAxle").of(CHAMBER)),
          when(
              any(LINING).seen("edgeRidge"),
              look("notSeated").of(DRUM),
              look("runOut").of(DRUM),
              look("unlikeMate").of(SHOE).atSameStation(),
              look("looseAsFound").of(old(HUB))),
          when(
              any(LINING).seen("touchesInPlaces"),
              look("tableBent").of(old(SHOE)).atSameStation(),
              look("sizeUnlikeDrum"),
              look("outOfRound").of(old(DRUM))),
          when(
              any(LINING).seen("crackedAtBoltHoles", "liftedFromTable"),
              look("rustUnderLining").of(old(SHOE)).atSameStation()),
          when(
              any(LINING).seen("grabs"),
              look("freeStroke").of(CHAMBER),
              look("looseAsFound").of(old(HUB)),
              look("flat").of(old(CAM_ROLLER)),
              look("seizedAsFound").of(old(CAM_ROLLER)),
              look("flat").of(old(CAMSHAFT)),
              look("outOfRound").of(old(DRUM))));

  private static final List<Sentence> GREASE_AND_OIL =
      List.of(
          when(
              any(LINING).seen("greaseSoaked"),
              look("purgeSideDry").of(any(GREASE_FITTING).where("part.station=not adjuster")),
              look("lip").of(LIP_SEAL),
              look("worn").of(old(CAMSHAFT_SEAL).at(HEAD_END)),
              look("sealGroove").of(old(CAMSHAFT)),
              look("leaking").of(WHEEL_SEAL)),
          when(
              any(LINING).seen("oilSoaked"),
              look("leaking").of(WHEEL_SEAL),
              look("seatGrooved").of(WHEEL_SEAL),
              look("looseAsFound").of(old(HUB)),
              look("gasketLeak").of(HUB),
              look("ventBlocked").of(HUB),
              look("overfilled").of(HUB)),
          when(
              fresh(WHEEL_SEAL).seen("leaking"),
              look("ventBlocked").of(HUB),
              look("endPlay").of(HUB),
              look("cocked"),
              look("seatGrooved")),
          when(
              any(GREASE_FITTING).seen("hardGrease", "purgeSideDry"),
              look("greaseHoleOutOfLine").of(CAMSHAFT_BUSHING).atSameStation()),
          when(
              any(GREASE_FITTING).seen("hardGrease", "purgeSideDry").at(TUBE),
              look("greaseHoleOutOfLine").of(CAMSHAFT_BUSHING),
              look("lip").of(LIP_SEAL.at(SPLINE_END))),
          when(any(GREASE_FITTING).seen("hardGrease"), look("blocked")),
          when(any(GREASE_FITTING).seen("purgeSideDry"), look("takesNoGrease")),
          when(any(CAMSHAFT).seen("journalWorn"), look("takesNoGrease").of(GREASE_FITTING)));

  private static final List<Sentence> DRUM_PATTERNS =
      List.of(
          when(
              any(DRUM).seen("blue", "heatChecksJoined"),
              look("drags"),
              look("diameter"),
              look("appliedStroke").of(CHAMBER).acrossAxle(),
              look("hexMoves").of(any(SLACK_ADJUSTER).where(AUTOMATIC)).acrossAxle()),
          when(
              any(DRUM).seen("hotSpotsSpaced"),
              look("touchesInPlaces").of(old(LINING)),
              look("outOfRound")),
          when(any(DRUM).seen("groovedInRings"), look("overFastener").of(old(LINING))),
          when(any(DRUM).seen("scored"), look("plugsMissing").of(DUST_SHIELD)),
          when(
              any(DRUM).seen("drags"),
              look("notFullyReleased").of(SPRING_BRAKE),
              look("slowToRelease").of(CHAMBER),
              look("stretched").of(old(RETURN_SPRING)),
              look("turnsFreely").of(CAMSHAFT)));

  private static final List<Sentence> SHOE_PATTERNS =
      List.of(
          when(
              old(CAM_ROLLER).seen("flat"),
              look("bent").of(old(ROLLER_CLIP)).atSameStation(),
              look("stretched").of(old(RETURN_SPRING)),
              look("stuckAfterCleaning"),
              look("flat").of(old(CAMSHAFT))),
          when(
              any(ANCHOR_PIN).seen("groove"),
              look("worn").of(old(ANCHOR_PIN_RETAINER)).atSameStation(),
              look("seized"),
              look("anchorEndWornOneWeb").of(old(SHOE)).atSameStation()),
          when(any(RETURN_SPRING).seen("broken"), look("blue").of(old(DRUM)), look("wrongType")));

  private static final List<Sentence> ROD_AND_SHAFT_PATTERNS =
      List.of(
          when(
              any(CAMSHAFT).seen("wearToNose", "rollerPastNose"),
              look("sizeUnlikeDrum").of(LINING),
              look("hexMoves").of(any(SLACK_ADJUSTER).where(AUTOMATIC))),
          when(
              any(CAMSHAFT_BUSHING).seen("wornToOneSide"),
              look("outOfPlane").of(PUSH_ROD),
              look("bent").of(CAMSHAFT_BRACKET)),
          when(any(CLEVIS_PIN).seen("wearSlanting").at(LARGE), look("unlikeOtherSide").of(SPACER)),
          when(
              any(PUSH_ROD).seen("bent", "rubbing", "outOfPlane"),
              look("wrongBracketHoles").of(CHAMBER),
              look("bent").of(CAMSHAFT_BRACKET),
              look("unlikeOtherSide").of(SPACER)),
          when(any(PUSH_ROD).seen("bent", "rubbing"), look("holesOutOfLine").of(SLACK_ADJUSTER)),
          when(
              any(SNAP_RING).seen("outOfGroove"),
              look("outOfPlane").of(PUSH_ROD),
              look("endPlay").of(CAMSHAFT),
              look("unlikeOtherSide").of(SPACER)),
          when(
              any(CAMSHAFT).seen("ringGrooveRounded"),
              look("outOfPlane").of(PUSH_ROD),
              look("unlikeOtherSide").of(SPACER)),
          when(
              any(CAMSHAFT).seen("splineTwisted"),
              look("looseOnSpline").of(SLACK_ADJUSTER),
              look("turnsFreely")));

  private static final List<Sentence> STROKE_PATTERNS =
      List.of(
          when(
              any(CHAMBER).beyond("free-stroke.max").where(AUTOMATIC),
              look("hexMoves").of(SLACK_ADJUSTER),
              look("thinnerInOnePlace").of(old(CLEVIS_PIN).at(SMALL))),
          when(
              any(SLACK_ADJUSTER).notSeen("hexMoves").where("layout.adjuster=automatic-pawl"),
              look("teethScored")),
          when(
              any(SLACK_ADJUSTER).notSeen("hexMoves").where("layout.adjuster=automatic-clutch"),
              look("clutchTorque")),
          when(any(SLACK_ADJUSTER).notSeen("hexMoves"), look("dirtInside")),
          when(any(CHAMBER).beyond("applied-stroke.max"), look("cracked").of(old(SPIDER))),
          when(any(CHAMBER).beyond("free-stroke.min"), look("drags").of(DRUM)),
          when(
              any(CHAMBER).seen("slowToRelease"),
              look("ventBlocked"),
              look("broken").of(old(RETURN_SPRING)),
              look("seizedAsFound").of(old(CAM_ROLLER)),
              look("endPlay").of(CAMSHAFT),
              look("turnsFreely").of(CAMSHAFT)));

  static final Group GROUP =
      new Group(
          List.of(),
          List.of(),
          join(
              LINING_PATTERNS,
              GREASE_AND_OIL,
              DRUM_PATTERNS,
              SHOE_PATTERNS,
              ROD_AND_SHAFT_PATTERNS,
              STROKE_PATTERNS));

  private Causes() {}
}
