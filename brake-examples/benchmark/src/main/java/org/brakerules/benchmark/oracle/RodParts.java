package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.again;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
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

  private static final List<Figure> FIGURES =
      join(
          Figure.read(
              PUSH_ROD,
              """
              angle-applied.max | angleApplied | at most | protractor |  |
              """),
          Figure.read(
              CLEVIS,
              """
              pin-movement.max | pinMovement | less than 1/16 in | feeler-gauge dial-indicator caliper |  |
              pin-clearance.max | pinMovement | at most 0.020 in | feeler-gauge dial-indicator caliper |  |
              thread-engagement.min | threadEngagement | at least 0.5 in | steel-rule caliper depth-gauge |  |
              rod-protrusion.max | rodProtrusion | at most 1/8 in | steel-rule caliper depth-gauge |  |
              """),
          Figure.read(
              CLEVIS_PIN,
              """
              diameter.min | diameter | at least 0.243 in | micrometer caliper | part.condition=new; part.size=quarter-inch |
              diameter.min | diameter | at least 0.491 in | micrometer caliper | part.condition=new; part.size=half-inch |
              diameter.min | diameter | at least 0.616 in | micrometer caliper | part.condition=new; part.size=five-eighths-inch |
              diameter.max | diameter | at most 0.248 in | micrometer caliper | part.condition=new; part.size=quarter-inch |
              diameter.max | diameter | at most 0.496 in | micrometer caliper | part.condition=new; part.size=half-inch |
              diameter.max | diameter | at most 0.621 in | micrometer caliper | part.condition=new; part.size=five-eighths-inch |
              """));

  /** It comes out with the clevis pin and is used once. */
  private static final Effect WITH_ITS_COTTER_PIN = replace().of(old(COTTER_PIN)).atSameStation();

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(PUSH_ROD).missing(), replace()),
          when(any(PUSH_ROD).seen("bent", "threadWorn"), replace()),
          when(any(PUSH_ROD).seen("rubbing", "outOfPlane", "offRightAngle"), adjust()),
          when(any(PUSH_ROD).beyond("angle-applied.max"), adjust()),
          when(any(JAM_NUT).missing(), replace()),
          when(any(JAM_NUT).seen("loose"), adjust()),
          when(any(CLEVIS).missing(), replace()),
          when(any(CLEVIS).seen("holeEnlarged", "holeOutOfRound", "threadWorn"), replace()),
          when(any(CLEVIS).seen("captiveNutPlay").where("layout.clevis=captive-nut"), replace()),
          when(any(CLEVIS).seen("threadShort", "rodInArmsPath"), adjust()),
          when(any(CLEVIS).beyond("thread-engagement.min", "rod-protrusion.max"), adjust()),
          when(old(CLEVIS).beyond("pin-movement.max"), replace()),
          when(fresh(CLEVIS).beyond("pin-movement.max"), again()),
          when(
              any(CLEVIS).beyond("pin-clearance.max"),
              again(),
              look("holeEnlarged"),
              look("thinnerInOnePlace").of(any(CLEVIS_PIN).at(LARGE))),
          when(any(CLEVIS_PIN).missing(), replace(), WITH_ITS_COTTER_PIN),
          when(
              any(CLEVIS_PIN)
                  .seen("stepped", "grooved", "thinnerInOnePlace", "seized", "boltInstead"),
              replace(),
              WITH_ITS_COTTER_PIN),
          when(
              any(CLEVIS_PIN).seen("wearSlanting"),
              replace(),
              WITH_ITS_COTTER_PIN,
              look("outOfPlane").of(PUSH_ROD)),
          when(
              any(CLEVIS_PIN).beyond("diameter.min", "diameter.max"),
              replace(),
              WITH_ITS_COTTER_PIN),
          when(any(COTTER_PIN).missing(), replace()),
          when(any(COTTER_PIN).seen("broken"), replace()),
          when(old(COTTER_PIN).disturbed(), replace()),
          when(any(CLEVIS).renewed(), replace().of(old(COTTER_PIN))),
          when(any(SLACK_ADJUSTER).renewed(), replace().of(old(COTTER_PIN))));

  static final Group GROUP = new Group(POINTS, FIGURES, SENTENCES);

  private RodParts() {}
}
