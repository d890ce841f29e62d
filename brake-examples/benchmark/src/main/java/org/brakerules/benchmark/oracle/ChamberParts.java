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
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.StrokeClass;
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

  private static final String MANUAL = "layout.adjuster=manual";
  private static final String AUTOMATIC = "layout.adjuster=automatic-pawl/automatic-clutch";
  private static final String STEER = "axle.kind=steer";

  private static final List<Sentence> PARTNER_SENTENCES =
      List.of(
          when(old(CHAMBER).seen("sizeUnlikePartner"), replace("CHAMBER-180")),
          when(old(CHAMBER).seen("sizeUnlikePartner").where(STEER), replace("CHAMBER-340")),
          when(fresh(CHAMBER).seen("sizeUnlikePartner"), hold("CHAMBER-280")),
          when(fresh(CHAMBER).seen("sizeUnlikePartner").where(STEER), hold("CHAMBER-350")),
          when(old(CHAMBER).with(ChamberParts::isOfOtherSize), replace("CHAMBER-190")),
          when(old(CHAMBER).with(ChamberParts::isOfOtherSize).where(STEER), replace("CHAMBER-320")),
          when(fresh(CHAMBER).with(ChamberParts::isOfOtherSize), hold("CHAMBER-290")),
          when(fresh(CHAMBER).with(ChamberParts::isOfOtherSize).where(STEER), hold("CHAMBER-330")),
          when(old(CHAMBER).seen("strokeClassUnlikePartner"), replace("CHAMBER-200")),
          when(old(CHAMBER).with(ChamberParts::isOfOtherStroke), replace("CHAMBER-210")),
          when(
              fresh(CHAMBER).seen("strokeClassUnlikePartner"),
              again("CHAMBER-300", "strokeClassUnlikePartner")),
          when(
              fresh(CHAMBER).with(ChamberParts::isOfOtherStroke),
              again("CHAMBER-310", "strokeClassUnlikePartner")));

  private static final List<Sentence> STROKE_SENTENCES =
      List.of(
          when(any(CHAMBER).beyond("applied-stroke.max").where(MANUAL), adjust("CHAMBER-010")),
          when(any(CHAMBER).beyond("free-stroke.max").where(MANUAL), adjust("CHAMBER-140")),
          when(any(CHAMBER).beyond("free-stroke.min").where(MANUAL), adjust("CHAMBER-160")),
          when(
              any(CHAMBER).beyond("free-stroke.max").where(AUTOMATIC),
              again("CHAMBER-150", "freeStroke")),
          when(
              any(CHAMBER).beyond("free-stroke.min").where(AUTOMATIC),
              again("CHAMBER-170", "freeStroke")),
          when(
              any(CHAMBER).beyond("applied-stroke.max").where("layout.adjuster=unknown"),
              look("CHAMBER-030", "layout.adjuster")),
          when(
              any(CHAMBER).beyond("applied-stroke.max").where(AUTOMATIC),
              again("CHAMBER-020", "appliedStroke"),
              look("CHAMBER-040", "setUnlikeGauge").of(SLACK_ADJUSTER),
              look("CHAMBER-370", "hexMoves").of(SLACK_ADJUSTER),
              look("CHAMBER-050", "markOutOfWindow").of(CONTROL_ARM),
              look("CHAMBER-060", "loose").of(CONTROL_ARM),
              look("CHAMBER-070", "stepped").of(old(CLEVIS_PIN)),
              look("CHAMBER-080", "splineBacklash").of(CAMSHAFT),
              look("CHAMBER-090", "radialPlay").of(CAMSHAFT_BUSHING),
              look("CHAMBER-100", "broken").of(old(RETURN_SPRING)),
              look("CHAMBER-110", "diameter").of(DRUM)),
          when(
              any(CHAMBER).beyond("applied-stroke.max").where("layout.adjuster=automatic-pawl"),
              look("CHAMBER-120", "freeTorque").of(SLACK_ADJUSTER)),
          when(
              any(CHAMBER).beyond("applied-stroke.max").where("layout.adjuster=automatic-clutch"),
              look("CHAMBER-130", "clutchTorque").of(SLACK_ADJUSTER)),
          when(
              any(CHAMBER).with(Contradicting::strokes),
              again("CHAMBER-380", "appliedStroke"),
              again("CHAMBER-390", "freeStroke")));

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(CHAMBER).missing(), replace("CHAMBER-270")),
          when(any(CHAMBER).seen("leak"), replace("CHAMBER-220")),
          when(any(CHAMBER).seen("sizeUnlikeList"), replace("CHAMBER-360")),
          when(any(CHAMBER).seen("loose"), adjust("CHAMBER-230")),
          when(any(CHAMBER).seen("wrongBracketHoles"), adjust("CHAMBER-250")),
          when(any(CHAMBER).seen("ventBlocked"), clean("CHAMBER-240")),
          when(
              any(CHAMBER).seen("pressureUnlikePartner"),
              again("CAUSE-910", "pressureUnlikePartner")),
          when(
              any(CHAMBER).seen("pressureUnlikeOtherAxle"),
              again("CAUSE-980", "pressureUnlikeOtherAxle")),
          when(
              any(SPRING_BRAKE).missing().where("layout.springBrake=yes"),
              replace("SPRING-BRAKE-070")),
          when(any(SPRING_BRAKE).seen("dent", "rustThrough"), hold("SPRING-BRAKE-010")),
          when(any(SPRING_BRAKE).seen("bentClamp", "fastenerMissing"), hold("SPRING-BRAKE-020")),
          when(any(SPRING_BRAKE).seen("boltWillNotSeat"), hold("SPRING-BRAKE-030")),
          when(
              any(SPRING_BRAKE)
                  .seen("dent", "rustThrough", "bentClamp", "fastenerMissing", "boltWillNotSeat"),
              replace("SPRING-BRAKE-040"),
              replace("CHAMBER-260").of(CHAMBER)),
          when(
              any(SPRING_BRAKE).notSeen("caged").with(ChamberParts::isOpened),
              hold("SPRING-BRAKE-050")),
          when(any(SPRING_BRAKE).beyond("caged-length.min"), hold("SPRING-BRAKE-060")),
          when(any(SPRING_BRAKE).seen("notFullyReleased"), again("CAUSE-920", "notFullyReleased")),
          when(any(HOSE).missing(), replace("HOSE-030")),
          when(any(HOSE).seen("chafed", "bulging"), replace("HOSE-010")),
          when(any(HOSE).seen("leak"), replace("HOSE-020")));

  static final Group GROUP =
      new Group(POINTS, join(PARTNER_SENTENCES, STROKE_SENTENCES, SENTENCES));

  private ChamberParts() {}

  /** Until the drum comes off no hand is in the brake. */
  private static boolean isOpened(Bench bench, Facts part) {
    return bench.job().scope() != Scope.WHEEL_ON;
  }

  /** Both ends of the axle state family and type, and something differs. */
  private static boolean isOfOtherSize(Bench bench, Facts part) {
    WheelEndView across = part.end().across();
    if (across == null) {
      return false;
    }
    ChamberSize here = part.end().layout().chamber();
    ChamberSize there = across.layout().chamber();
    return isSizeStated(here)
        && isSizeStated(there)
        && !(here.family() == there.family() && here.type().equals(there.type()));
  }

  private static boolean isSizeStated(ChamberSize size) {
    return size.family() != ChamberFamily.UNKNOWN && !size.type().isEmpty();
  }

  private static boolean isOfOtherStroke(Bench bench, Facts part) {
    WheelEndView across = part.end().across();
    StrokeClass here = part.end().layout().chamber().strokeClass();
    return across != null
        && here != StrokeClass.UNKNOWN
        && across.layout().chamber().strokeClass() != StrokeClass.UNKNOWN
        && across.layout().chamber().strokeClass() != here;
  }
}
