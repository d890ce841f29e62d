package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.again;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Sentence.whenRenewed;
import static org.brakerules.benchmark.oracle.Subject.any;
import static org.brakerules.benchmark.oracle.Subject.fresh;
import static org.brakerules.benchmark.oracle.Subject.old;
import static org.brakerules.benchmark.oracle.Trade.join;
import static org.brakerules.model.part.PartKind.CLEVIS;
import static org.brakerules.model.part.PartKind.CLEVIS_PIN;
import static org.brakerules.model.part.PartKind.COTTER_PIN;
import static org.brakerules.model.part.PartKind.JAM_NUT;
import static org.brakerules.model.part.PartKind.PUSH_ROD;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.reading.Station.LARGE;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** From the chamber's rod to the arm: push rod, jam nut, clevis, clevis pins and cotter pins. */
final class RodParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              PUSH_ROD,
              """
              wheel-on | always |  | bent rubbing outOfPlane offRightAngle
              wheel-on | with-limit |  | angleApplied
              camshaft-out | always | part.condition=as-found | threadWorn
              """),
          Point.read(
              JAM_NUT,
              """
              wheel-on | always |  | loose
              """),
          Point.read(
              CLEVIS,
              """
              wheel-on | always |  | layout.clevis pinMovement threadShort rodInArmsPath
              wheel-on | always | layout.clevis=captive-nut | captiveNutPlay
              camshaft-out | always | part.condition=as-found | holeEnlarged holeOutOfRound threadWorn
              camshaft-out | always |  | threadEngagement rodProtrusion
              """),
          Point.read(
              CLEVIS_PIN,
              """
              wheel-on | always |  | boltInstead
              wheel-on | always | part.condition=new | diameter
              camshaft-out | always | part.condition=as-found | stepped grooved thinnerInOnePlace
              camshaft-out | always | part.condition=as-found | wearSlanting seized
              """),
          Point.read(
              COTTER_PIN,
              """
              wheel-on | always |  | broken
              """));

  /** It comes out with the clevis pin and is used once. */
  private static final Subject ITS_COTTER_PIN = old(COTTER_PIN);

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(PUSH_ROD).missing(), replace("PUSH-ROD-070")),
          when(any(PUSH_ROD).seen("bent"), replace("PUSH-ROD-010")),
          when(any(PUSH_ROD).seen("threadWorn"), replace("PUSH-ROD-060")),
          when(any(PUSH_ROD).seen("rubbing"), adjust("PUSH-ROD-020")),
          when(any(PUSH_ROD).seen("outOfPlane"), adjust("PUSH-ROD-030")),
          when(any(PUSH_ROD).seen("offRightAngle"), adjust("PUSH-ROD-040")),
          when(any(PUSH_ROD).beyond("angle-applied.max"), adjust("PUSH-ROD-050")),
          when(any(JAM_NUT).missing(), replace("JAM-NUT-020")),
          when(any(JAM_NUT).seen("loose"), adjust("JAM-NUT-010")),
          when(any(CLEVIS).missing(), replace("CLEVIS-130")),
          when(any(CLEVIS).seen("holeEnlarged", "holeOutOfRound"), replace("CLEVIS-060")),
          when(any(CLEVIS).seen("threadWorn"), replace("CLEVIS-120")),
          when(
              any(CLEVIS).seen("captiveNutPlay").where("layout.clevis=captive-nut"),
              replace("CLEVIS-070")),
          when(any(CLEVIS).seen("threadShort"), adjust("CLEVIS-080")),
          when(any(CLEVIS).seen("rodInArmsPath"), adjust("CLEVIS-100")),
          when(any(CLEVIS).beyond("thread-engagement.min"), adjust("CLEVIS-090")),
          when(any(CLEVIS).beyond("rod-protrusion.max"), adjust("CLEVIS-110")),
          when(old(CLEVIS).beyond("pin-movement.max"), replace("CLEVIS-010")),
          when(fresh(CLEVIS).beyond("pin-movement.max"), again("CLEVIS-020", "pinMovement")),
          when(
              any(CLEVIS).beyond("pin-clearance.max"),
              again("CLEVIS-030", "pinMovement"),
              look("CLEVIS-050", "thinnerInOnePlace").of(any(CLEVIS_PIN).at(LARGE))),
          when(old(CLEVIS).beyond("pin-clearance.max"), look("CLEVIS-040", "holeEnlarged")),
          when(
              any(CLEVIS_PIN).missing(),
              replace("CLEVIS-PIN-070"),
              replace("COTTER-PIN-090").of(ITS_COTTER_PIN).atSameStation()),
          when(
              any(CLEVIS_PIN).seen("stepped", "grooved", "thinnerInOnePlace"),
              replace("CLEVIS-PIN-010")),
          when(any(CLEVIS_PIN).seen("boltInstead"), replace("CLEVIS-PIN-020")),
          when(any(CLEVIS_PIN).seen("wearSlanting"), replace("CLEVIS-PIN-030")),
          when(any(CLEVIS_PIN).seen("seized"), replace("CLEVIS-PIN-040")),
          when(
              any(CLEVIS_PIN)
                  .seen(
                      "stepped",
                      "grooved",
                      "thinnerInOnePlace",
                      "wearSlanting",
                      "seized",
                      "boltInstead"),
              replace("COTTER-PIN-020").of(ITS_COTTER_PIN).atSameStation()),
          when(
              any(CLEVIS_PIN).beyond("diameter.max"),
              replace("CLEVIS-PIN-050"),
              replace("COTTER-PIN-070").of(ITS_COTTER_PIN).atSameStation()),
          when(
              any(CLEVIS_PIN).beyond("diameter.min"),
              replace("CLEVIS-PIN-060"),
              replace("COTTER-PIN-080").of(ITS_COTTER_PIN).atSameStation()),
          when(any(COTTER_PIN).missing(), replace("COTTER-PIN-060")),
          when(any(COTTER_PIN).seen("broken"), replace("COTTER-PIN-050")),
          when(old(COTTER_PIN).disturbed(), replace("COTTER-PIN-010")),
          whenRenewed(CLEVIS, replace("COTTER-PIN-030").of(old(COTTER_PIN))),
          whenRenewed(SLACK_ADJUSTER, replace("COTTER-PIN-040").of(old(COTTER_PIN))));

  static final Group GROUP = new Group(POINTS, SENTENCES);

  private RodParts() {}
}
