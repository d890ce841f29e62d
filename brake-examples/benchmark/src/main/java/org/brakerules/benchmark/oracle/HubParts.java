package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.again;
import static org.brakerules.benchmark.oracle.Effect.clean;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Sentence.whenRenewed;
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

  private static final String PRE_SET = "part.bearings=pre-set";
  private static final String INBOARD = "layout.drumMount=inboard";

  private static final List<Sentence> HUB_SENTENCES =
      List.of(
          when(any(HUB).beyond("end-play.max").unless(PRE_SET), adjust("HUB-010")),
          when(any(HUB).beyond("end-play.min").unless(PRE_SET), adjust("HUB-020")),
          when(any(HUB).beyond("end-play.max").where(PRE_SET), again("HUB-030", "endPlay")),
          when(any(HUB).beyond("end-play.min").where(PRE_SET), again("HUB-040", "endPlay")),
          when(old(HUB).seen("looseAsFound").unless(PRE_SET), adjust("HUB-120")),
          when(old(HUB).seen("looseAsFound").where(PRE_SET), look("HUB-130", "endPlay")),
          when(
              old(HUB).seen("looseAsFound"),
              look("WHEEL-BEARING-040", "bad").of(old(WHEEL_BEARING))),
          when(any(HUB).seen("ventBlocked"), clean("HUB-050")),
          when(any(HUB).seen("overfilled"), adjust("HUB-060")),
          when(any(HUB).seen("gasketLeak"), adjust("HUB-070")),
          when(any(WHEEL_SEAL).missing(), replace("WHEEL-SEAL-070")),
          when(any(WHEEL_SEAL).seen("leaking"), replace("WHEEL-SEAL-030")),
          when(any(WHEEL_SEAL).seen("seatGrooved"), replace("WHEEL-SEAL-040")),
          when(any(WHEEL_SEAL).seen("cocked"), replace("WHEEL-SEAL-050")),
          when(old(WHEEL_SEAL).disturbed(), replace("WHEEL-SEAL-140")),
          when(any(HUB).disturbed(), replace("WHEEL-SEAL-010").of(old(WHEEL_SEAL))),
          when(any(DRUM).disturbed().where(INBOARD), replace("WHEEL-SEAL-020").of(old(WHEEL_SEAL))),
          whenRenewed(WHEEL_BEARING, replace("WHEEL-SEAL-060").of(WHEEL_SEAL)),
          when(fresh(WHEEL_BEARING), replace("WHEEL-SEAL-150").of(old(WHEEL_SEAL))),
          when(any(WHEEL_BEARING).missing(), replace("WHEEL-BEARING-030")),
          when(old(WHEEL_BEARING).seen("bad"), replace("WHEEL-BEARING-010").of(old(WHEEL_BEARING))),
          when(fresh(WHEEL_BEARING).seen("bad"), replace("WHEEL-BEARING-020")));

  private static final List<Sentence> SENSOR_SENTENCES =
      List.of(
          when(any(WHEEL_SPEED_SENSOR).missing(), replace("WHEEL-SPEED-SENSOR-100")),
          when(any(WHEEL_SPEED_SENSOR).seen("notAgainstRing"), adjust("WHEEL-SPEED-SENSOR-020")),
          when(any(WHEEL_SPEED_SENSOR).beyond("gap.max"), adjust("WHEEL-SPEED-SENSOR-010")),
          when(
              any(WHEEL_SPEED_SENSOR).seen("noSignal"),
              again("WHEEL-SPEED-SENSOR-030", "noSignal")),
          when(any(WHEEL_SPEED_SENSOR).seen("cablePinched"), replace("WHEEL-SPEED-SENSOR-040")),
          when(fresh(WHEEL_SPEED_SENSOR), look("WHEEL-SPEED-SENSOR-080", "noSignal")),
          when(fresh(TONE_RING), look("WHEEL-SPEED-SENSOR-170", "noSignal").of(WHEEL_SPEED_SENSOR)),
          when(
              any(HUB).disturbed(),
              look("WHEEL-SPEED-SENSOR-060", "noSignal").of(WHEEL_SPEED_SENSOR)),
          when(
              any(DRUM).disturbed().where(INBOARD),
              look("WHEEL-SPEED-SENSOR-070", "noSignal").of(WHEEL_SPEED_SENSOR)),
          whenRenewed(
              TONE_RING, again("WHEEL-SPEED-SENSOR-090", "noSignal").of(WHEEL_SPEED_SENSOR)),
          when(
              any(WHEEL_SPEED_SENSOR).seen("lampOn"),
              again("WHEEL-SPEED-SENSOR-050", "lampOn"),
              look("WHEEL-SPEED-SENSOR-110", "notAgainstRing"),
              look("WHEEL-SPEED-SENSOR-120", "cablePinched"),
              look("WHEEL-SPEED-SENSOR-130", "noSignal"),
              look("WHEEL-SPEED-SENSOR-140", "gap"),
              look("WHEEL-SPEED-SENSOR-150", "bent").of(TONE_RING),
              look("WHEEL-SPEED-SENSOR-160", "toothMissing").of(TONE_RING)),
          when(any(TONE_RING).missing(), replace("TONE-RING-020")),
          when(any(TONE_RING).seen("bent", "toothMissing"), replace("TONE-RING-010")));

  static final Group GROUP = new Group(POINTS, join(HUB_SENTENCES, SENSOR_SENTENCES));

  private HubParts() {}
}
