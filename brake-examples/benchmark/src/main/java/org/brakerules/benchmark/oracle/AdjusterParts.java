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
import org.brakerules.benchmark.oracle.Trade.Group;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.SlackAdjuster;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Reading;
import org.jspecify.annotations.Nullable;

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

  private static final String STEER = "axle.kind=steer";

  /** The day from which on a vehicle must have automatic adjusters, by rule set. */
  private static final Map<String, LocalDate> AUTOMATIC_FROM =
      Map.of(
          "us-federal", LocalDate.of(1994, 10, 20),
          "us-virginia", LocalDate.of(1994, 10, 20),
          "quebec", LocalDate.of(1996, 5, 31));

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(SLACK_ADJUSTER).missing(), replace("SLACK-ADJUSTER-300")),
          when(
              any(SLACK_ADJUSTER).with(AdjusterParts::isManualToGo), replace("SLACK-ADJUSTER-010")),
          when(
              old(SLACK_ADJUSTER).with(AdjusterParts::isMateOfManualToGo),
              replace("SLACK-ADJUSTER-020")),
          when(old(SLACK_ADJUSTER).seen("kindUnlikePartner"), replace("SLACK-ADJUSTER-030")),
          when(
              fresh(SLACK_ADJUSTER).seen("kindUnlikePartner"),
              again("SLACK-ADJUSTER-320", "kindUnlikePartner")),
          when(
              old(SLACK_ADJUSTER).with(AdjusterParts::isOfOtherKind),
              replace("SLACK-ADJUSTER-040")),
          when(
              fresh(SLACK_ADJUSTER).with(AdjusterParts::isOfOtherKind),
              again("SLACK-ADJUSTER-310", "kindUnlikePartner")),
          when(old(SLACK_ADJUSTER).seen("lengthUnlikePartner"), replace("SLACK-ADJUSTER-050")),
          when(
              old(SLACK_ADJUSTER).seen("lengthUnlikePartner").where(STEER),
              replace("SLACK-ADJUSTER-070")),
          when(fresh(SLACK_ADJUSTER).seen("lengthUnlikePartner"), hold("SLACK-ADJUSTER-330")),
          when(
              fresh(SLACK_ADJUSTER).seen("lengthUnlikePartner").where(STEER),
              hold("SLACK-ADJUSTER-350")),
          when(
              old(SLACK_ADJUSTER).with(AdjusterParts::isOfOtherLength),
              replace("SLACK-ADJUSTER-060")),
          when(
              old(SLACK_ADJUSTER).with(AdjusterParts::isOfOtherLength).where(STEER),
              replace("SLACK-ADJUSTER-080")),
          when(
              fresh(SLACK_ADJUSTER).with(AdjusterParts::isOfOtherLength),
              hold("SLACK-ADJUSTER-340")),
          when(
              fresh(SLACK_ADJUSTER).with(AdjusterParts::isOfOtherLength).where(STEER),
              hold("SLACK-ADJUSTER-360")),
          when(any(SLACK_ADJUSTER).seen("lockSleeveStuck"), replace("SLACK-ADJUSTER-090")),
          when(any(SLACK_ADJUSTER).seen("hexRounded"), replace("SLACK-ADJUSTER-100")),
          when(any(SLACK_ADJUSTER).beyond("free-torque.max"), replace("SLACK-ADJUSTER-110")),
          when(any(SLACK_ADJUSTER).beyond("clutch-torque.min"), replace("SLACK-ADJUSTER-130")),
          when(any(SLACK_ADJUSTER).seen("teethScored"), replace("SLACK-ADJUSTER-120")),
          when(any(SLACK_ADJUSTER).seen("armBushingWorn"), replace("SLACK-ADJUSTER-260")),
          when(any(SLACK_ADJUSTER).seen("gearWorn"), replace("SLACK-ADJUSTER-270")),
          when(
              any(SLACK_ADJUSTER).seen("turnedByHand").where("layout.adjuster=automatic-pawl"),
              look("SLACK-ADJUSTER-140", "freeTorque")),
          when(
              any(SLACK_ADJUSTER).seen("turnedByHand").where("layout.adjuster=automatic-clutch"),
              look("SLACK-ADJUSTER-150", "clutchTorque")),
          when(
              any(SLACK_ADJUSTER).seen("turnedByHand").where("layout.adjuster=manual"),
              look("SLACK-ADJUSTER-370", "lockSleeveStuck")),
          when(any(SLACK_ADJUSTER).seen("setUnlikeGauge"), adjust("SLACK-ADJUSTER-170")),
          when(any(SLACK_ADJUSTER).seen("facingWrongWay"), adjust("SLACK-ADJUSTER-180")),
          when(any(SLACK_ADJUSTER).seen("holesOutOfLine"), adjust("SLACK-ADJUSTER-190")),
          when(any(SLACK_ADJUSTER).notSeen("hexMoves"), again("SLACK-ADJUSTER-160", "hexMoves")),
          when(
              any(SLACK_ADJUSTER).seen("bootTorn"),
              clean("SLACK-ADJUSTER-200"),
              look("SLACK-ADJUSTER-210", "dirtInside")),
          when(any(SLACK_ADJUSTER).seen("dirtInside"), replace("SLACK-ADJUSTER-220")),
          when(
              any(SLACK_ADJUSTER).seen("takesNoGrease"),
              clean("SLACK-ADJUSTER-230"),
              again("SLACK-ADJUSTER-240", "takesNoGrease")),
          when(
              fresh(GREASE_FITTING).seen("takesNoGrease").at(ADJUSTER),
              replace("SLACK-ADJUSTER-250").of(SLACK_ADJUSTER)),
          when(
              any(SLACK_ADJUSTER).seen("looseOnSpline"),
              look("SLACK-ADJUSTER-280", "gearWorn"),
              look("SLACK-ADJUSTER-290", "splineBacklash").of(CAMSHAFT)),
          when(any(CONTROL_ARM).missing(), replace("CONTROL-ARM-050")),
          when(any(CONTROL_ARM).seen("cracked", "bent"), replace("CONTROL-ARM-010")),
          when(any(CONTROL_ARM).seen("worn"), replace("CONTROL-ARM-020")),
          when(any(CONTROL_ARM).seen("loose"), adjust("CONTROL-ARM-030")),
          when(any(CONTROL_ARM).seen("markOutOfWindow"), adjust("CONTROL-ARM-040")));

  static final Group GROUP = new Group(POINTS, SENTENCES);

  private AdjusterParts() {}

  private static boolean isManualToGo(Bench bench, Facts part) {
    return isManualToGo(bench, part.end());
  }

  private static boolean isManualToGo(Bench bench, WheelEndView end) {
    LocalDate from = AUTOMATIC_FROM.get(bench.job().ruleSet().id());
    return end.layout().adjuster() == AdjusterKind.MANUAL
        && from != null
        && end.builtOn().isPresent()
        && !end.builtOn().get().isBefore(from);
  }

  /** The adjuster across the axle gives way to an automatic one. */
  private static boolean isMateOfManualToGo(Bench bench, Facts part) {
    WheelEndView across = part.end().across();
    return across != null && isManualToGo(bench, across);
  }

  private static boolean isOfOtherKind(Bench bench, Facts part) {
    WheelEndView across = part.end().across();
    AdjusterKind kind = part.end().layout().adjuster();
    return across != null
        && kind != AdjusterKind.UNKNOWN
        && across.layout().adjuster() != AdjusterKind.UNKNOWN
        && across.layout().adjuster() != kind;
  }

  private static boolean isOfOtherLength(Bench bench, Facts part) {
    WheelEndView across = part.end().across();
    Length here = armLength(part.end());
    Length there = across == null ? null : armLength(across);
    return here != null && there != null && !here.equals(there);
  }

  /** The first that was read, in the order of the places. */
  private static @Nullable Length armLength(WheelEndView end) {
    int number = Place.MOST_OF_A_KIND + 1;
    Length length = null;
    for (Facts part : end.parts(SLACK_ADJUSTER)) {
      List<Reading<Length>> readings = ((SlackAdjuster) part.part()).armLength().readings();
      if (!readings.isEmpty() && part.place().number() < number) {
        number = part.place().number();
        length = readings.get(0).value();
      }
    }
    return length;
  }
}
