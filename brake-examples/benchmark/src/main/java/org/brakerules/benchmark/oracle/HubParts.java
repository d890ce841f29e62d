package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.again;
import static org.brakerules.benchmark.oracle.Effect.clean;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Subject.any;
import static org.brakerules.benchmark.oracle.Subject.fresh;
import static org.brakerules.benchmark.oracle.Subject.old;
import static org.brakerules.benchmark.oracle.Trade.join;
import static org.brakerules.model.part.PartKind.DRUM;
import static org.brakerules.model.part.PartKind.HUB;
import static org.brakerules.model.part.PartKind.TONE_RING;
import static org.brakerules.model.part.PartKind.WHEEL_BEARING;
import static org.brakerules.model.part.PartKind.WHEEL_SEAL;
import static org.brakerules.model.part.PartKind.WHEEL_SPEED_SENSOR;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** Hub, wheel seal, wheel bearings, wheel-speed sensor and tone ring. */
final class HubParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              HUB,
              """
              drum-off | always |  | bearings ventBlocked overfilled gasketLeak endPlay
              wheel-on | on-demand | part.condition=as-found | looseAsFound
              """),
          Point.read(
              WHEEL_SEAL,
              """
              drum-off | always |  | layout.drumMount leaking
              drum-off | always | part.condition=new | seatGrooved cocked
              """),
          Point.read(
              WHEEL_BEARING,
              """
              drum-off | always |  | bad
              """),
          Point.read(
              WHEEL_SPEED_SENSOR,
              """
              drum-off | always |  | layout.drumMount notAgainstRing cablePinched
              drum-off | on-demand |  | noSignal gap
              wheel-on | on-demand |  | lampOn
              """),
          Point.read(
              TONE_RING,
              """
              drum-off | always |  | bent toothMissing
              """));

  private static final List<Figure> FIGURES =
      join(
          Figure.read(
              HUB,
              """
              end-play.max | endPlay | at most 0.005 in | dial-indicator after-work | part.bearings=hand-set |
              end-play.min | endPlay | at least 0.001 in | dial-indicator after-work | part.bearings=hand-set |
              """),
          Figure.read(
              WHEEL_SPEED_SENSOR,
              """
              gap.max | gap | at most 0.028 in | feeler-gauge |  |
              """));

  private static final List<Sentence> SENTENCES =
      List.of(
          when(
              any(HUB).beyond("end-play.max", "end-play.min").where("part.bearings=hand-set"),
              adjust()),
          when(
              any(HUB).beyond("end-play.max", "end-play.min").where("part.bearings=pre-set"),
              again()),
          when(
              old(HUB).seen("looseAsFound").where("part.bearings=not pre-set"),
              adjust(),
              look("bad").of(old(WHEEL_BEARING))),
          when(
              old(HUB).seen("looseAsFound").where("part.bearings=pre-set"),
              look("endPlay"),
              look("bad").of(old(WHEEL_BEARING))),
          when(any(HUB).seen("ventBlocked"), clean()),
          when(any(HUB).seen("overfilled", "gasketLeak"), adjust()),
          when(any(WHEEL_SEAL).missing(), replace()),
          when(any(WHEEL_SEAL).seen("leaking", "seatGrooved", "cocked"), replace()),
          when(old(WHEEL_SEAL).disturbed(), replace()),
          when(any(HUB).disturbed(), replace().of(old(WHEEL_SEAL))),
          when(
              any(DRUM).disturbed().where("layout.drumMount=inboard"),
              replace().of(old(WHEEL_SEAL))),
          when(any(WHEEL_BEARING).renewed(), replace().of(WHEEL_SEAL)),
          when(fresh(WHEEL_BEARING), replace().of(old(WHEEL_SEAL))),
          when(any(WHEEL_BEARING).missing(), replace()),
          when(old(WHEEL_BEARING).seen("bad"), replace().of(old(WHEEL_BEARING))),
          when(fresh(WHEEL_BEARING).seen("bad"), replace()),
          when(any(WHEEL_SPEED_SENSOR).missing(), replace()),
          when(any(WHEEL_SPEED_SENSOR).seen("notAgainstRing"), adjust()),
          when(any(WHEEL_SPEED_SENSOR).beyond("gap.max"), adjust()),
          when(any(WHEEL_SPEED_SENSOR).seen("noSignal", "lampOn"), again()),
          when(any(WHEEL_SPEED_SENSOR).seen("cablePinched"), replace()),
          when(fresh(WHEEL_SPEED_SENSOR), look("noSignal")),
          when(fresh(TONE_RING), look("noSignal").of(WHEEL_SPEED_SENSOR)),
          when(any(HUB).disturbed(), look("noSignal").of(WHEEL_SPEED_SENSOR)),
          when(
              any(DRUM).disturbed().where("layout.drumMount=inboard"),
              look("noSignal").of(WHEEL_SPEED_SENSOR)),
          when(any(TONE_RING).renewed(), again().of(WHEEL_SPEED_SENSOR)),
          when(
              any(WHEEL_SPEED_SENSOR).seen("lampOn"),
              look("notAgainstRing"),
              look("cablePinched"),
              look("noSignal"),
              look("gap"),
              look("bent").of(TONE_RING),
              look("toothMissing").of(TONE_RING)),
          when(any(TONE_RING).missing(), replace()),
          when(any(TONE_RING).seen("bent", "toothMissing"), replace()));

  static final Group GROUP = new Group(POINTS, FIGURES, SENTENCES);

  private HubParts() {}
}
