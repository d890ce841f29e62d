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
import static org.brakerules.model.part.PartKind.CAMSHAFT_BUSHING;
import static org.brakerules.model.part.PartKind.CHAMBER;
import static org.brakerules.model.part.PartKind.CLEVIS_PIN;
import static org.brakerules.model.part.PartKind.CONTROL_ARM;
import static org.brakerules.model.part.PartKind.DRUM;
import static org.brakerules.model.part.PartKind.HOSE;
import static org.brakerules.model.part.PartKind.RETURN_SPRING;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.part.PartKind.SPRING_BRAKE;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;
import org.brakerules.model.part.Scope;

/** Chamber, spring brake and hose. */
final class ChamberParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              CHAMBER,
              """
              wheel-on | always |  | layout.adjuster layout.springBrake freeStroke appliedStroke
              wheel-on | always |  | sizeUnlikePartner strokeClassUnlikePartner leak loose ventBlocked
              wheel-on | always |  | wrongBracketHoles
              wheel-on | on-demand |  | sizeUnlikeList pressureUnlikePartner pressureUnlikeOtherAxle slowToRelease
              """),
          Point.read(
              SPRING_BRAKE,
              """
              wheel-on | always |  | dent rustThrough bentClamp fastenerMissing
              drum-off | always |  | boltWillNotSeat caged
              drum-off | always | part.caged=seen | cagedLength
              wheel-on | on-demand |  | notFullyReleased
              """),
          Point.read(
              HOSE,
              """
              wheel-on | always |  | chafed bulging leak
              """));

  private static final List<Figure> FIGURES =
      join(
          Figure.read(
              CHAMBER,
              """
              applied-stroke.max | appliedStroke | at most 1 1/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=6; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/8 in | full-application | layout.chamber.family=clamp; layout.chamber.type=9; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/8 in | full-application | layout.chamber.family=clamp; layout.chamber.type=12; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=12; layout.chamber.strokeClass=long | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=16; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=16; layout.chamber.strokeClass=long | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=20; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=20; layout.chamber.strokeClass=long; layout.chamber.ratedStroke=not 3 in/76 mm | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=20; layout.chamber.strokeClass=long; layout.chamber.ratedStroke=3 in/76 mm | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=24; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=24; layout.chamber.strokeClass=long; layout.chamber.ratedStroke=not 3 in/76 mm | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=24; layout.chamber.strokeClass=long; layout.chamber.ratedStroke=3 in/76 mm | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=30; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=30; layout.chamber.strokeClass=long | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=36; layout.chamber.strokeClass=standard | law:us-federal to:2021-10-13
              applied-stroke.max | appliedStroke | at most 2 1/2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=36; layout.chamber.strokeClass=standard | law:us-federal from:2021-10-14
              applied-stroke.max | appliedStroke | at most 2 1/4 in | full-application | layout.chamber.family=dual-diaphragm; layout.chamber.type=30 | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/8 in | full-application | layout.chamber.family=bolt; layout.chamber.type=A | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=bolt; layout.chamber.type=B | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=bolt; layout.chamber.type=C | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 1/4 in | full-application | layout.chamber.family=bolt; layout.chamber.type=D | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/8 in | full-application | layout.chamber.family=bolt; layout.chamber.type=E | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/4 in | full-application | layout.chamber.family=bolt; layout.chamber.type=F | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=bolt; layout.chamber.type=G | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 1/2 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=9 | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 1/2 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=12 | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=16 | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=20 | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=24 | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/4 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=30 | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 3/4 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=36 | law:us-federal
              applied-stroke.max | appliedStroke | at most 3 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=50 | law:us-federal
              applied-stroke.max | appliedStroke | at most 80 % of the rated stroke | full-application | otherwise | law:us-federal
              free-stroke.max | freeStroke | at most 0.625 in | pried-by-hand | layout.adjuster=automatic-pawl/automatic-clutch |
              free-stroke.max | freeStroke | at most 0.75 in | pried-by-hand | layout.adjuster=manual |
              free-stroke.min | freeStroke | at least 0.375 in | pried-by-hand | layout.adjuster=automatic-pawl/automatic-clutch |
              free-stroke.min | freeStroke | at least 0.5 in | pried-by-hand | layout.adjuster=manual |
              """),
          Figure.read(
              SPRING_BRAKE,
              """
              caged-length.min | cagedLength | at least 2.915 in | steel-rule caliper depth-gauge | layout.chamber.family=clamp; layout.chamber.type=24; layout.chamber.springType=24; layout.chamber.ratedStroke=2.25 in/2.5 in |
              caged-length.min | cagedLength | at least 2.915 in | steel-rule caliper depth-gauge | layout.chamber.family=clamp; layout.chamber.type=30; layout.chamber.springType=30; layout.chamber.ratedStroke=2.5 in |
              caged-length.min | cagedLength | at least 3.537 in | steel-rule caliper depth-gauge | layout.chamber.family=clamp; layout.chamber.type=30; layout.chamber.springType=30; layout.chamber.ratedStroke=3 in/76 mm |
              caged-length.min | cagedLength | at least 3.463 in | steel-rule caliper depth-gauge | layout.chamber.family=clamp; layout.chamber.type=24; layout.chamber.springType=30; layout.chamber.ratedStroke=3 in/76 mm |
              caged-length.min | cagedLength | at least 3.602 in | steel-rule caliper depth-gauge | layout.chamber.family=clamp; layout.chamber.type=36; layout.chamber.springType=36; layout.chamber.ratedStroke=3 in/76 mm |
              """));

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(CHAMBER).missing(), replace()),
          when(any(CHAMBER).seen("leak", "sizeUnlikeList"), replace()),
          when(old(CHAMBER).seen("sizeUnlikePartner", "strokeClassUnlikePartner"), replace()),
          when(old(CHAMBER).with(ChamberParts::isOfOtherSize), replace()),
          when(old(CHAMBER).with(ChamberParts::isOfOtherStroke), replace()),
          when(fresh(CHAMBER).seen("sizeUnlikePartner"), hold()),
          when(fresh(CHAMBER).with(ChamberParts::isOfOtherSize), hold()),
          when(fresh(CHAMBER).seen("strokeClassUnlikePartner"), again()),
          when(fresh(CHAMBER).with(ChamberParts::isOfOtherStroke), again()),
          when(any(CHAMBER).seen("loose", "wrongBracketHoles"), adjust()),
          when(any(CHAMBER).seen("ventBlocked"), clean()),
          when(any(CHAMBER).seen("pressureUnlikePartner", "pressureUnlikeOtherAxle"), again()),
          when(
              any(CHAMBER)
                  .beyond("applied-stroke.max", "free-stroke.min", "free-stroke.max")
                  .where("layout.adjuster=manual"),
              adjust()),
          when(
              any(CHAMBER)
                  .beyond("applied-stroke.max", "free-stroke.min", "free-stroke.max")
                  .where("layout.adjuster=automatic-pawl/automatic-clutch"),
              again()),
          when(
              any(CHAMBER).beyond("applied-stroke.max").where("layout.adjuster=unknown"),
              look("layout.adjuster")),
          when(
              any(CHAMBER)
                  .beyond("applied-stroke.max")
                  .where("layout.adjuster=automatic-pawl/automatic-clutch"),
              look("setUnlikeGauge").of(SLACK_ADJUSTER),
              look("hexMoves").of(SLACK_ADJUSTER),
              look("markOutOfWindow").of(CONTROL_ARM),
              look("loose").of(CONTROL_ARM),
              look("stepped").of(old(CLEVIS_PIN)),
              look("splineBacklash").of(CAMSHAFT),
              look("radialPlay").of(CAMSHAFT_BUSHING),
              look("broken").of(old(RETURN_SPRING)),
              look("diameter").of(DRUM)),
          when(
              any(CHAMBER).beyond("applied-stroke.max").where("layout.adjuster=automatic-pawl"),
              look("freeTorque").of(SLACK_ADJUSTER)),
          when(
              any(CHAMBER).beyond("applied-stroke.max").where("layout.adjuster=automatic-clutch"),
              look("clutchTorque").of(SLACK_ADJUSTER)),
          when(any(CHAMBER).with(Contradicting::strokes), again()),
          when(any(SPRING_BRAKE).missing().where("layout.springBrake=yes"), replace()),
          when(
              any(SPRING_BRAKE)
                  .seen("dent", "rustThrough", "bentClamp", "fastenerMissing", "boltWillNotSeat"),
              hold(),
              replace(),
              replace().of(CHAMBER)),
          when(any(SPRING_BRAKE).notSeen("caged").with(ChamberParts::isOpened), hold()),
          when(any(SPRING_BRAKE).beyond("caged-length.min"), hold()),
          when(any(SPRING_BRAKE).seen("notFullyReleased"), again()),
          when(any(HOSE).missing(), replace()),
          when(any(HOSE).seen("chafed", "bulging", "leak"), replace()));

  static final Group GROUP = new Group(POINTS, FIGURES, SENTENCES);

  private ChamberParts() {}

  /** Until the drum comes off no hand is in the brake. */
  private static boolean isOpened(Bench bench, WheelEndView end, Facts part) {
    return bench.job().scope() != Scope.WHEEL_ON;
  }

  private static boolean isOfOtherSize(Bench bench, WheelEndView end, Facts part) {
    return bench.isUnlikeAcross(end, "layout.chamber.family", "layout.chamber.type");
  }

  private static boolean isOfOtherStroke(Bench bench, WheelEndView end, Facts part) {
    return bench.isUnlikeAcross(end, "layout.chamber.strokeClass");
  }
}
