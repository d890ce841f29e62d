package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Subject.any;
import static org.brakerules.benchmark.oracle.Subject.old;
import static org.brakerules.benchmark.oracle.Trade.join;
import static org.brakerules.model.part.PartKind.ANCHOR_PIN;
import static org.brakerules.model.part.PartKind.ANCHOR_PIN_RETAINER;
import static org.brakerules.model.part.PartKind.CAMSHAFT;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BRACKET;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BUSHING;
import static org.brakerules.model.part.PartKind.CAM_ROLLER;
import static org.brakerules.model.part.PartKind.CHAMBER;
import static org.brakerules.model.part.PartKind.CLEVIS_PIN;
import static org.brakerules.model.part.PartKind.DRUM;
import static org.brakerules.model.part.PartKind.DUST_SHIELD;
import static org.brakerules.model.part.PartKind.LINING;
import static org.brakerules.model.part.PartKind.PUSH_ROD;
import static org.brakerules.model.part.PartKind.RETURN_SPRING;
import static org.brakerules.model.part.PartKind.ROLLER_CLIP;
import static org.brakerules.model.part.PartKind.SHOE;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.part.PartKind.SNAP_RING;
import static org.brakerules.model.part.PartKind.SPACER;
import static org.brakerules.model.part.PartKind.SPIDER;
import static org.brakerules.model.part.PartKind.SPRING_BRAKE;
import static org.brakerules.model.reading.Station.LARGE;
import static org.brakerules.model.reading.Station.SMALL;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** From a pattern on drum, shoes, rod, shaft or stroke to its causes, which only ask for looks. */
final class Causes {

  private static final String AUTOMATIC = "layout.adjuster=automatic-pawl/automatic-clutch";

  private static final Subject AUTOMATIC_ADJUSTER = any(SLACK_ADJUSTER).where(AUTOMATIC);

  private static final List<Sentence> DRUM_PATTERNS =
      List.of(
          when(
              any(DRUM).seen("blue", "heatChecksJoined"),
              look("CAUSE-400", "drags"),
              look("CAUSE-410", "diameter"),
              look("CAUSE-420", "appliedStroke").of(CHAMBER).acrossAxle(),
              look("CAUSE-430", "hexMoves").of(AUTOMATIC_ADJUSTER).acrossAxle()),
          when(
              any(DRUM).seen("hotSpotsSpaced"),
              look("CAUSE-440", "touchesInPlaces").of(old(LINING)),
              look("CAUSE-450", "outOfRound")),
          when(any(DRUM).seen("groovedInRings"), look("CAUSE-470", "overFastener").of(old(LINING))),
          when(any(DRUM).seen("scored"), look("CAUSE-480", "plugsMissing").of(DUST_SHIELD)),
          when(
              any(DRUM).seen("drags"),
              look("CAUSE-490", "notFullyReleased").of(SPRING_BRAKE),
              look("CAUSE-500", "slowToRelease").of(CHAMBER),
              look("CAUSE-510", "stretched").of(old(RETURN_SPRING)),
              look("CAUSE-520", "turnsFreely").of(CAMSHAFT)));

  private static final List<Sentence> SHOE_PATTERNS =
      List.of(
          when(
              any(CAM_ROLLER).seen("flat"),
              look("CAUSE-530", "bent").of(old(ROLLER_CLIP)).atSameStation(),
              look("CAUSE-540", "stretched").of(old(RETURN_SPRING)),
              look("CAUSE-550", "stuckAfterCleaning"),
              look("CAUSE-560", "flat").of(old(CAMSHAFT))),
          when(
              any(ANCHOR_PIN).seen("groove"),
              look("CAUSE-590", "worn").of(old(ANCHOR_PIN_RETAINER)).atSameStation(),
              look("CAUSE-600", "seized"),
              look("CAUSE-610", "anchorEndWornOneWeb").of(old(SHOE)).atSameStation()),
          when(
              any(RETURN_SPRING).seen("broken"),
              look("CAUSE-620", "blue").of(old(DRUM)),
              look("CAUSE-630", "wrongType")));

  private static final List<Sentence> ROD_AND_SHAFT_PATTERNS =
      List.of(
          when(
              any(CAMSHAFT).seen("wearToNose", "rollerPastNose"),
              look("CAUSE-570", "sizeUnlikeDrum").of(LINING),
              look("CAUSE-580", "hexMoves").of(AUTOMATIC_ADJUSTER)),
          when(
              any(CAMSHAFT_BUSHING).seen("wornToOneSide"),
              look("CAUSE-700", "outOfPlane").of(PUSH_ROD),
              look("CAUSE-710", "bent").of(CAMSHAFT_BRACKET)),
          when(
              any(CLEVIS_PIN).seen("wearSlanting").at(LARGE),
              look("CAUSE-720", "unlikeOtherSide").of(SPACER)),
          when(
              any(PUSH_ROD).seen("bent", "rubbing", "outOfPlane"),
              look("CAUSE-730", "wrongBracketHoles").of(CHAMBER),
              look("CAUSE-740", "bent").of(CAMSHAFT_BRACKET),
              look("CAUSE-760", "unlikeOtherSide").of(SPACER)),
          when(
              any(PUSH_ROD).seen("bent", "rubbing"),
              look("CAUSE-750", "holesOutOfLine").of(SLACK_ADJUSTER)),
          when(
              any(SNAP_RING).seen("outOfGroove"),
              look("CAUSE-770", "outOfPlane").of(PUSH_ROD),
              look("CAUSE-780", "endPlay").of(CAMSHAFT),
              look("CAUSE-790", "unlikeOtherSide").of(SPACER)),
          when(
              any(CAMSHAFT).seen("ringGrooveRounded"),
              look("CAUSE-800", "outOfPlane").of(PUSH_ROD),
              look("CAUSE-810", "unlikeOtherSide").of(SPACER)),
          when(
              any(CAMSHAFT).seen("splineTwisted"),
              look("CAUSE-820", "looseOnSpline").of(SLACK_ADJUSTER),
              look("CAUSE-830", "turnsFreely")));

  private static final List<Sentence> STROKE_PATTERNS =
      List.of(
          when(
              any(CHAMBER).beyond("free-stroke.max").where(AUTOMATIC),
              look("CAUSE-840", "hexMoves").of(SLACK_ADJUSTER),
              look("CAUSE-850", "thinnerInOnePlace").of(old(CLEVIS_PIN).at(SMALL))),
          when(
              any(SLACK_ADJUSTER).notSeen("hexMoves").where("layout.adjuster=automatic-pawl"),
              look("CAUSE-860", "teethScored")),
          when(
              any(SLACK_ADJUSTER).notSeen("hexMoves").where("layout.adjuster=automatic-clutch"),
              look("CAUSE-870", "clutchTorque")),
          when(AUTOMATIC_ADJUSTER.notSeen("hexMoves"), look("CAUSE-880", "dirtInside")),
          when(
              any(CHAMBER).beyond("applied-stroke.max").where(AUTOMATIC),
              look("CAUSE-890", "cracked").of(old(SPIDER))),
          when(any(CHAMBER).beyond("free-stroke.min"), look("CAUSE-900", "drags").of(DRUM)),
          when(
              any(CHAMBER).seen("slowToRelease"),
              look("CAUSE-930", "ventBlocked"),
              look("CAUSE-940", "broken").of(old(RETURN_SPRING)),
              look("CAUSE-950", "seizedAsFound").of(old(CAM_ROLLER)),
              look("CAUSE-960", "endPlay").of(CAMSHAFT),
              look("CAUSE-970", "turnsFreely").of(CAMSHAFT)));

  static final Group GROUP =
      new Group(
          List.of(), join(DRUM_PATTERNS, SHOE_PATTERNS, ROD_AND_SHAFT_PATTERNS, STROKE_PATTERNS));

  private Causes() {}
}
