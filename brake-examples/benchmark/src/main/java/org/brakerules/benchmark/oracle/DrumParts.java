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

  private static final List<Figure> FIGURES =
      join(
          Figure.read(
              DRUM,
              """
              diameter.max | diameter | at most 16.620 in | drum-gauge bore-gauge | layout.drumDiameter=16.5 in |
              diameter.max | diameter | at most 15.120 in | drum-gauge bore-gauge | layout.drumDiameter=15 in |
              diameter.min | diameter | at least 16.450 in | drum-gauge bore-gauge | layout.drumDiameter=16.5 in |
              diameter.min | diameter | at least 14.950 in | drum-gauge bore-gauge | layout.drumDiameter=15 in |
              diameter.min | diameter | at least 11.950 in | drum-gauge bore-gauge | layout.drumDiameter=12 in |
              clean-up-diameter.max | cleanUpDiameter | at most 16.580 in | drum-gauge bore-gauge depth-gauge | layout.drumDiameter=16.5 in |
              clean-up-diameter.max | cleanUpDiameter | at most 15.080 in | drum-gauge bore-gauge depth-gauge | layout.drumDiameter=15 in |
              clean-up-diameter.max | cleanUpDiameter | at most 12.090 in | drum-gauge bore-gauge depth-gauge | layout.drumDiameter=12 in |
              out-of-round.max | outOfRound | at most 0.015 in | drum-gauge bore-gauge |  |
              taper.max | taper | at most 0.010 in | drum-gauge bore-gauge |  |
              run-out.max | runOut | at most 0.020 in | dial-indicator |  |
              score-depth.max | scoreDepth | at most 0.090 in | depth-gauge dial-indicator | layout.drumDiameter=12 in |
              """));

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(DRUM).missing(), replace()),
          when(
              any(DRUM).beyond("diameter.max", "clean-up-diameter.max", "score-depth.max"),
              replace()),
          when(fresh(DRUM).beyond("out-of-round.max", "taper.max"), replace()),
          when(fresh(DRUM).seen("scored", "bellMouthed", "groovedInRings"), replace()),
          when(
              old(DRUM).beyond("out-of-round.max", "taper.max"),
              adjust(),
              look("cleanUpDiameter"),
              adjust().of(old(DRUM)).acrossAxle(),
              look("cleanUpDiameter").of(old(DRUM)).acrossAxle()),
          when(
              old(DRUM).seen("scored", "bellMouthed", "groovedInRings"),
              adjust(),
              look("cleanUpDiameter"),
              adjust().of(old(DRUM)).acrossAxle(),
              look("cleanUpDiameter").of(old(DRUM)).acrossAxle()),
          when(any(DRUM).renewed(), again().of(old(DRUM)).acrossAxle()),
          when(any(DRUM).beyond("diameter.min"), again()),
          when(fresh(DRUM), look("diameter").of(old(DRUM)).acrossAxle()),
          when(fresh(DRUM).beyond("run-out.max"), adjust()),
          when(old(DRUM).beyond("run-out.max"), adjust(), look("cleanUpDiameter")),
          when(any(DRUM).seen("fineHeatChecks"), look("heatChecksJoined")),
          when(any(DRUM).seen("heatChecksJoined", "opensOnApplication"), replace()),
          when(
              any(DRUM).seen("outsideCrack", "pieceMissing"),
              hold(),
              replace(),
              look("notSeated"),
              look("faceNotClean")),
          when(any(DRUM).seen("blue", "hardSpots"), replace()),
          when(any(DRUM).seen("faintSpots"), again()),
          when(any(DRUM).seen("soaked"), clean()),
          when(any(DRUM).seen("protectiveOil", "faceNotClean"), clean(), look("runOut")),
          when(any(DRUM).seen("notSeated"), adjust(), look("faceNotClean"), look("runOut")),
          when(any(DUST_SHIELD).missing(), replace()),
          when(any(DUST_SHIELD).seen("bent", "touching", "loose", "plugsMissing"), adjust()));

  static final Group GROUP = new Group(POINTS, FIGURES, SENTENCES);

  private DrumParts() {}
}
