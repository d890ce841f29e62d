package org.brakerules.internal.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Working;
import org.brakerules.calc.force.AreaTimesLength;
import org.brakerules.calc.force.AxleBalance;
import org.brakerules.calc.force.CamshaftTorque;
import org.brakerules.calc.force.PushRodForce;
import org.brakerules.calc.force.WheelForce;
import org.brakerules.figure.Figure;
import org.brakerules.model.job.Size;
import org.brakerules.model.part.PushRod;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.reading.Method;

/** Estimates of force at one pressure, for holding one brake against another. */
final class ForceFigures {

  /** The pressure at which brakes are compared here. */
  private static final Pressure COMPARED_AT = Pressure.parse("60 psi");

  private static final BigDecimal COMMON_FRICTION = new BigDecimal("0.35");
  private static final String ANGLE = "angle between rod and arm";
  private static final Angle RIGHT_ANGLE = Angle.parse("90 deg");
  private static final Angle STRAIGHT = Angle.parse("180 deg");

  private ForceFigures() {}

  static List<Figure> of(Bench bench) {
    List<Figure> figures = new ArrayList<>();
    if (bench.isAtEndOfTravel() && area(bench).isPresent()) {
      figures.add(
          new Figure(
              bench.wheelEnd().toString(),
              PushRodForce.missing(
                  "a shorter stroke: at the end of its travel a rod has no force")));
    } else {
      area(bench).ifPresent(area -> forces(bench, area, figures));
    }
    return figures;
  }

  /** The torques on the camshafts of one axle held against each other; empty for no two types. */
  static Optional<Figure> acrossAxle(Bench one, Bench other) {
    return area(one).isPresent() && area(other).isPresent()
        ? Optional.of(new Figure(one.wheelEnd() + ", " + other.wheelEnd(), balance(one, other)))
        : Optional.empty();
  }

  private static Working balance(Bench one, Bench other) {
    if (one.isAtEndOfTravel() || other.isAtEndOfTravel()) {
      return AxleBalance.missing("a shorter stroke: at the end of its travel a rod has no force");
    }
    if (measuredAngle(one).isPresent() != measuredAngle(other).isPresent()) {
      return AxleBalance.missing("angle between rod and arm of both brakes");
    }
    Optional<Torque> left = turning(one);
    Optional<Torque> right = turning(other);
    return left.isPresent() && right.isPresent()
        ? AxleBalance.of(left.get(), right.get()).working()
        : AxleBalance.missing("torque on both camshafts, from chamber type, arm and angle");
  }

  /** A rod all but in line with its arm turns nothing that could be compared. */
  private static Optional<Torque> turning(Bench bench) {
    return torque(bench)
        .map(torque -> torque.torque().value())
        .filter(torque -> torque.newtonMetres().signum() > 0);
  }

  /** Empty where the angle that was measured cannot be one. */
  private static Optional<CamshaftTorque> torque(Bench bench) {
    Angle angle = measuredAngle(bench).orElse(RIGHT_ANGLE);
    return isUsable(angle)
        ? area(bench)
            .flatMap(area -> bench.arm().map(arm -> CamshaftTorque.of(force(area), arm, angle)))
        : Optional.empty();
  }

  private static Working torqueWork(Bench bench) {
    Optional<CamshaftTorque> torque = torque(bench);
    if (torque.isEmpty()) {
      return CamshaftTorque.missing("angle between rod and arm, measured again");
    }
    return angleTold(bench, torque.get().working(), ANGLE);
  }

  private static Working angleTold(Bench bench, Working working, String name) {
    return measuredAngle(bench).isPresent()
        ? working
        : working.assumed(name, "a right angle, it was not measured");
  }

  private static Estimate<Force> force(BigDecimal area) {
    return PushRodForce.of(COMPARED_AT, area).force();
  }

  private static void forces(Bench bench, BigDecimal area, List<Figure> figures) {
    String about = bench.wheelEnd().toString();
    figures.add(
        new Figure(
            about,
            PushRodForce.of(COMPARED_AT, area).working().assumed("pressure", "to compare brakes")));
    if (bench.arm().isEmpty()) {
      figures.add(new Figure(about, CamshaftTorque.missing("effective length of the arm")));
    } else {
      figures.add(new Figure(about, AreaTimesLength.of(area, bench.arm().orElseThrow()).working()));
      figures.add(new Figure(about, torqueWork(bench)));
      torque(bench).ifPresent(torque -> figures.add(new Figure(about, wheel(bench, torque))));
    }
  }

  /** With the drum at its nominal size and a friction that both wheels are taken to have. */
  private static Working wheel(Bench bench, CamshaftTorque torque) {
    Optional<Length> rolling = bench.positive(Size.ROLLING_RADIUS);
    Optional<Length> drum = bench.layout().drumDiameter().map(Bench::onRadius);
    if (rolling.isEmpty() || drum.isEmpty()) {
      return WheelForce.missing(
          rolling.isEmpty() ? "rolling radius of the tyre" : "nominal diameter of the drum");
    }
    WheelForce.Sizes sizes = new WheelForce.Sizes(bench.lift(), drum.get(), rolling.get());
    Working working =
        WheelForce.of(torque.torque(), sizes, COMMON_FRICTION)
            .working()
            .assumed("friction", "the same for every wheel")
            .assumed("efficiency", "as in the worksheet");
    return bench.withLift(working, "lift radius");
  }

  /** The type of a chamber is its effective area in square inches, where it is a number. */
  private static Optional<BigDecimal> area(Bench bench) {
    String type = bench.layout().chamber().type();
    return type.matches("[1-9][0-9]?") ? Optional.of(new BigDecimal(type)) : Optional.empty();
  }

  private static Optional<Angle> measuredAngle(Bench bench) {
    return bench
        .one(PushRod.class)
        .flatMap(rod -> Bench.last(rod.angleApplied(), Method.PROTRACTOR));
  }

  private static boolean isUsable(Angle angle) {
    return angle.microdegrees() > 0 && angle.compareTo(STRAIGHT) < 0;
  }
}
