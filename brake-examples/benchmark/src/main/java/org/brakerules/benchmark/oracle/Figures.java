package org.brakerules.benchmark.oracle;

import static org.brakerules.model.part.PartKind.ANCHOR_PIN;
import static org.brakerules.model.part.PartKind.CAMSHAFT;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BUSHING;
import static org.brakerules.model.part.PartKind.CLEVIS;
import static org.brakerules.model.part.PartKind.CLEVIS_PIN;
import static org.brakerules.model.part.PartKind.DRUM;
import static org.brakerules.model.part.PartKind.HUB;
import static org.brakerules.model.part.PartKind.LINING;
import static org.brakerules.model.part.PartKind.PUSH_ROD;
import static org.brakerules.model.part.PartKind.SHOE;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.part.PartKind.SNAP_RING;
import static org.brakerules.model.part.PartKind.WHEEL_SPEED_SENSOR;

import java.util.List;
import java.util.stream.Stream;

/** What readings are held against, part by part; strokes have a table of their own. */
final class Figures {

  static final List<Figure> ALL =
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
              """),
          Figure.read(
              SNAP_RING,
              """
              gap.max | gap | at most 0.062 in | spline-end feeler-gauge | part.station=spline-end |
              """),
          Figure.read(
              SHOE,
              """
              span.min | span | at least | caliper steel-rule |  |
              span.max | span | at most | caliper steel-rule |  |
              roller-recess.max | rollerRecess | less than | caliper bore-gauge |  |
              """),
          Figure.read(
              ANCHOR_PIN,
              """
              groove-depth.max | grooveDepth | at most 0.03 in | depth-gauge | layout.anchorPins=fixed |
              """),
          Figure.read(
              LINING,
              """
              thickness.min | thickness | at least 3/16 in | shoe-centre caliper depth-gauge steel-rule | axle.kind=steer; layout.liningPieces=strip | only:us-federal law:us-federal
              thickness.min | thickness | at least 1/4 in | shoe-centre caliper depth-gauge steel-rule | axle.kind=steer; layout.liningPieces=two-blocks | only:us-federal law:us-federal
              thickness.min | thickness | at least 1/4 in | shoe-centre caliper depth-gauge steel-rule | axle.kind=drive/trailer | only:us-federal law:us-federal
              thickness.min | thickness | at least 5 mm | thinnest-point caliper depth-gauge steel-rule | layout.liningFastening=bonded | only:quebec law:quebec
              thickness.min | thickness | at least 4.8 mm | thinnest-point caliper depth-gauge steel-rule | layout.liningFastening=riveted; axle.kind=steer | only:quebec law:quebec
              thickness.min | thickness | at least 8 mm | thinnest-point caliper depth-gauge steel-rule | layout.liningFastening=riveted; axle.kind=drive/trailer | only:quebec law:quebec
              thickness.min | thickness | at least 8 mm | thinnest-point caliper depth-gauge steel-rule | layout.liningFastening=bolted | only:quebec law:quebec
              thickness.periodic.min | thickness | at least 1/4 in | shoe-centre caliper depth-gauge steel-rule |  | only:us-federal law:us-federal
              thickness.anywhere.min | thickness | at least 3/16 in | thinnest-point caliper depth-gauge steel-rule | axle.kind=steer | only:us-federal
              thickness.anywhere.min | thickness | at least 1/4 in | thinnest-point caliper depth-gauge steel-rule | axle.kind=drive/trailer | only:us-federal
              over-fastener.min | overFastener | at least 1/32 in | depth-gauge caliper | layout.liningFastening=riveted/bolted |
              crack-depth.max | crackDepth | at most 50 % | depth-gauge feeler-gauge steel-rule | part.cracked=seen | law:quebec
              """),
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
              """),
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
              """),
          Figure.read(
              SLACK_ADJUSTER,
              """
              free-torque.max | freeTorque | at most 45 lbf.in | torque-wrench | layout.adjuster=automatic-pawl |
              clutch-torque.min | clutchTorque | at least 13 lbf.ft | torque-wrench | layout.adjuster=automatic-clutch |
              """),
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
              """),
          StrokeFigures.ALL);

  private Figures() {}

  @SafeVarargs
  @SuppressWarnings("varargs") // the array is only read
  private static List<Figure> join(List<Figure>... lists) {
    return Stream.of(lists).flatMap(List::stream).toList();
  }
}
