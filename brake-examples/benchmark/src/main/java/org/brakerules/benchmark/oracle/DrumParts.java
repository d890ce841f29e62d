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
import static org.brakerules.model.part.PartKind.DRUM;
import static org.brakerules.model.part.PartKind.DUST_SHIELD;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** Drum and dust shield. */
final class DrumParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              DRUM,
              """
              drum-off | always | part.condition=as-found | diameter outOfRound taper scored
              drum-off | always | part.condition=as-found | groovedInRings fineHeatChecks heatChecksJoined
              drum-off | always | part.condition=as-found | outsideCrack pieceMissing blue hardSpots
              drum-off | always | part.condition=as-found | faintSpots hotSpotsSpaced soaked
              drum-off | on-demand |  | runOut cleanUpDiameter bellMouthed opensOnApplication notSeated
              drum-off | with-limit | part.condition=as-found; part.scored=seen | scoreDepth
              drum-off | always | part.condition=new | protectiveOil
              drum-off | always |  | faceNotClean
              wheel-on | on-demand |  | drags
              """),
          Point.read(
              DUST_SHIELD,
              """
              drum-off | always |  | bent loose touching plugsMissing
              """));

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(DRUM).missing(), replace("DRUM-370")),
          when(any(DRUM).beyond("diameter.max"), replace("DRUM-010")),
          when(any(DRUM).beyond("clean-up-diameter.max"), replace("DRUM-110")),
          when(any(DRUM).beyond("score-depth.max"), replace("DRUM-120")),
          when(fresh(DRUM).beyond("out-of-round.max"), replace("DRUM-190")),
          when(fresh(DRUM).beyond("taper.max"), replace("DRUM-200")),
          when(fresh(DRUM).seen("scored", "bellMouthed", "groovedInRings"), replace("DRUM-220")),
          when(
              old(DRUM).beyond("out-of-round.max"),
              adjust("DRUM-030"),
              look("DRUM-070", "cleanUpDiameter"),
              adjust("DRUM-130").of(old(DRUM)).acrossAxle(),
              look("DRUM-160", "cleanUpDiameter").of(old(DRUM)).acrossAxle()),
          when(
              old(DRUM).beyond("taper.max"),
              adjust("DRUM-040"),
              look("DRUM-080", "cleanUpDiameter"),
              adjust("DRUM-140").of(old(DRUM)).acrossAxle(),
              look("DRUM-170", "cleanUpDiameter").of(old(DRUM)).acrossAxle()),
          when(
              old(DRUM).seen("scored", "bellMouthed", "groovedInRings"),
              adjust("DRUM-050"),
              look("DRUM-090", "cleanUpDiameter"),
              adjust("DRUM-150").of(old(DRUM)).acrossAxle(),
              look("DRUM-180", "cleanUpDiameter").of(old(DRUM)).acrossAxle()),
          whenRenewed(DRUM, again("DRUM-020", "diameter").of(old(DRUM)).acrossAxle()),
          when(any(DRUM).beyond("diameter.min"), again("DRUM-390", "diameter")),
          when(fresh(DRUM), look("DRUM-380", "diameter").of(old(DRUM)).acrossAxle()),
          when(fresh(DRUM).beyond("run-out.max"), adjust("DRUM-210")),
          when(
              old(DRUM).beyond("run-out.max"),
              adjust("DRUM-060"),
              look("DRUM-100", "cleanUpDiameter")),
          when(any(DRUM).seen("fineHeatChecks"), look("DRUM-230", "heatChecksJoined")),
          when(any(DRUM).seen("heatChecksJoined", "opensOnApplication"), replace("DRUM-240")),
          when(
              any(DRUM).seen("outsideCrack", "pieceMissing"),
              hold("DRUM-260"),
              replace("DRUM-250"),
              look("DRUM-270", "notSeated"),
              look("CAUSE-460", "faceNotClean")),
          when(any(DRUM).seen("blue", "hardSpots"), replace("DRUM-280")),
          when(any(DRUM).seen("faintSpots"), again("DRUM-290", "outOfRound")),
          when(any(DRUM).seen("soaked"), clean("DRUM-300")),
          when(any(DRUM).seen("protectiveOil"), clean("DRUM-310")),
          when(any(DRUM).seen("faceNotClean"), clean("DRUM-320")),
          when(any(DRUM).seen("protectiveOil", "faceNotClean"), look("DRUM-330", "runOut")),
          when(
              any(DRUM).seen("notSeated"),
              adjust("DRUM-340"),
              look("DRUM-350", "faceNotClean"),
              look("DRUM-360", "runOut")),
          when(any(DUST_SHIELD).missing(), replace("DUST-SHIELD-030")),
          when(any(DUST_SHIELD).seen("bent", "touching", "loose"), adjust("DUST-SHIELD-010")),
          when(any(DUST_SHIELD).seen("plugsMissing"), adjust("DUST-SHIELD-020")));

  static final Group GROUP = new Group(POINTS, SENTENCES);

  private DrumParts() {}
}
