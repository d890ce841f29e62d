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
import static org.brakerules.model.part.PartKind.CONTROL_ARM;
import static org.brakerules.model.part.PartKind.GREASE_FITTING;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.reading.Station.ADJUSTER;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.benchmark.oracle.Trade.Group;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Reading;

/** Slack adjuster and control arm. */
final class AdjusterParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              SLACK_ADJUSTER,
              """
              wheel-on | always |  | layout.adjuster kindUnlikePartner lengthUnlikePartner facingWrongWay
              wheel-on | always | layout.adjuster=automatic-pawl/automatic-clutch | layout.arm
              wheel-on | always | layout.adjuster=automatic-pawl/automatic-clutch | setUnlikeGauge
              wheel-on | always | layout.adjuster=manual | vehicle.builtOn
              wheel-on | on-demand |  | armLength armMovement looseOnSpline dirtInside
              wheel-on | on-demand | layout.adjuster=automatic-pawl/automatic-clutch | hexMoves
              wheel-on | on-demand | layout.adjuster=automatic-pawl/automatic-clutch | turnedByHand
              wheel-on | always | layout.adjuster=manual; part.condition=as-found | lockSleeveStuck
              wheel-on | always | part.condition=as-found | hexRounded takesNoGrease
              wheel-on | always | layout.adjuster=automatic-pawl/automatic-clutch; part.condition=as-found | bootTorn
              shoes-off | always | layout.adjuster=automatic-pawl; part.condition=as-found | teethScored
              shoes-off | always | layout.adjuster=automatic-pawl; part.condition=as-found | freeTorque
              shoes-off | always | layout.adjuster=automatic-clutch; part.condition=as-found | clutchTorque
              camshaft-out | always |  | holesOutOfLine
              camshaft-out | always | part.condition=as-found | armBushingWorn
              camshaft-out | on-demand |  | gearWorn
              """),
          Point.read(
              CONTROL_ARM,
              """
              wheel-on | always | part.condition=as-found | cracked bent worn
              wheel-on | always |  | loose markOutOfWindow
              """));

  private static final List<Figure> FIGURES =
      join(
          Figure.read(
              SLACK_ADJUSTER,
              """
              free-torque.max | freeTorque | at most 45 lbf.in | torque-wrench | layout.adjuster=automatic-pawl |
              clutch-torque.min | clutchTorque | at least 13 lbf.ft | torque-wrench | layout.adjuster=automatic-clutch |
              """));

  /** The day from which on a vehicle must have automatic adjusters, by rule set. */
  private static final Map<String, LocalDate> AUTOMATIC_FROM =
      Map.of(
          "us-federal", LocalDate.of(1994, 10, 20),
          "us-virginia", LocalDate.of(1994, 10, 20),
          "quebec", LocalDate.of(1996, 5, 31));

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(SLACK_ADJUSTER).missing(), replace()),
          when(
              any(SLACK_ADJUSTER)
                  .where("layout.adjuster=manual")
                  .with(AdjusterParts::mustBeAutomatic),
              replace()),
          when(old(SLACK_ADJUSTER).with(AdjusterParts::isMateOfManualToGo), replace()),
          when(old(SLACK_ADJUSTER).seen("kindUnlikePartner", "lengthUnlikePartner"), replace()),
          when(fresh(SLACK_ADJUSTER).seen("kindUnlikePartner"), again()),
          when(fresh(SLACK_ADJUSTER).seen("lengthUnlikePartner"), hold()),
          when(old(SLACK_ADJUSTER).with(AdjusterParts::isOfOtherKind), replace()),
          when(fresh(SLACK_ADJUSTER).with(AdjusterParts::isOfOtherKind), again()),
          when(old(SLACK_ADJUSTER).with(AdjusterParts::isOfOtherLength), replace()),
          when(fresh(SLACK_ADJUSTER).with(AdjusterParts::isOfOtherLength), hold()),
          when(any(SLACK_ADJUSTER).seen("lockSleeveStuck", "hexRounded"), replace()),
          when(any(SLACK_ADJUSTER).beyond("free-torque.max", "clutch-torque.min"), replace()),
          when(any(SLACK_ADJUSTER).seen("teethScored", "armBushingWorn", "gearWorn"), replace()),
          when(
              any(SLACK_ADJUSTER).seen("turnedByHand").where("layout.adjuster=automatic-pawl"),
              look("freeTorque")),
          when(
              any(SLACK_ADJUSTER).seen("turnedByHand").where("layout.adjuster=automatic-clutch"),
              look("clutchTorque")),
          when(
              any(SLACK_ADJUSTER).seen("turnedByHand").where("layout.adjuster=manual"),
              look("lockSleeveStuck")),
          when(
              any(SLACK_ADJUSTER).seen("facingWrongWay", "holesOutOfLine", "setUnlikeGauge"),
              adjust()),
          when(any(SLACK_ADJUSTER).notSeen("hexMoves"), again()),
          when(any(SLACK_ADJUSTER).seen("bootTorn"), look("dirtInside"), clean()),
          when(any(SLACK_ADJUSTER).seen("dirtInside"), replace()),
          when(any(SLACK_ADJUSTER).seen("takesNoGrease"), clean(), again()),
          when(
              fresh(GREASE_FITTING).seen("takesNoGrease").at(ADJUSTER),
              replace().of(SLACK_ADJUSTER)),
          when(
              any(SLACK_ADJUSTER).seen("looseOnSpline"),
              look("gearWorn"),
              look("splineBacklash").of(CAMSHAFT)),
          when(any(CONTROL_ARM).missing(), replace()),
          when(any(CONTROL_ARM).seen("cracked", "bent", "worn"), replace()),
          when(any(CONTROL_ARM).seen("loose", "markOutOfWindow"), adjust()));

  static final Group GROUP = new Group(POINTS, FIGURES, SENTENCES);

  private AdjusterParts() {}

  private static boolean mustBeAutomatic(Bench bench, WheelEndView end, Facts part) {
    LocalDate from = AUTOMATIC_FROM.get(bench.job().ruleSet().id());
    return end.builtOn().filter(day -> from != null && !day.isBefore(from)).isPresent();
  }

  /** The adjuster across the axle gives way to an automatic one. */
  private static boolean isMateOfManualToGo(Bench bench, WheelEndView end, Facts part) {
    return bench
        .end(end.path().partner())
        .filter(across -> across.state("layout.adjuster").equals("manual"))
        .filter(across -> mustBeAutomatic(bench, across, part))
        .isPresent();
  }

  private static boolean isOfOtherKind(Bench bench, WheelEndView end, Facts part) {
    return bench.isUnlikeAcross(end, "layout.adjuster");
  }

  private static boolean isOfOtherLength(Bench bench, WheelEndView end, Facts part) {
    Optional<Quantity<?>> here = armLength(end);
    Optional<Quantity<?>> there = bench.end(end.path().partner()).flatMap(AdjusterParts::armLength);
    return here.isPresent() && there.isPresent() && !here.equals(there);
  }

  private static Optional<Quantity<?>> armLength(WheelEndView end) {
    return end.parts(SLACK_ADJUSTER).stream()
        .flatMap(part -> part.measurement("armLength").orElseThrow().readings().stream())
        .<Quantity<?>>map(Reading::value)
        .findFirst();
  }
}
