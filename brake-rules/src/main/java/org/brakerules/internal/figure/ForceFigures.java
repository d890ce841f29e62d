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
import org.brakerules.calc.stroke.CamRotation;
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
  private static final Angle RIGHT_ANGLE = Angle.parse("90 deg");
  private static final Angle STRAIGHT = Angle.parse("180 deg");

  private ForceFigures() {}

  static List<Figure> of(Bench bench) {
    List<Figure> figures = new ArrayList<>();
    area(bench).ifPresent(area -> forces(bench, area, bench.arm(), figures));
    return figures;
  }

  /**
   * The torques on the camshafts of one axle held against each other; empty unless both are known.
   */
  static Optional<Figure> acrossAxle(Bench one, Bench other) {
    if (measuredAngle(one).isPresent() != measuredAngle(other).isPresent()) {
      return Optional.empty();
    }
    return turning(one)
        .flatMap(left -> turning(other).map(right -> AxleBalance.of(left, right)))
        .map(balance -> new Figure(one.wheelEnd() + ", " + other.wheelEnd(), balance.working()));
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
    Working working = torque.get().working();
    return measuredAngle(bench).isPresent()
        ? working
        : working.missing("angle between rod and arm; a right angle taken");
  }

  private static Estimate<Force> force(BigDecimal area) {
    return PushRodForce.of(COMPARED_AT, area).force();
  }

  private static void forces(
      Bench bench, BigDecimal area, Optional<Length> arm, List<Figure> figures) {
    String about = bench.wheelEnd().toString();
    PushRodForce force = PushRodForce.of(COMPARED_AT, area);
    figures.add(new Figure(about, force.working()));
    if (arm.isEmpty()) {
      figures.add(new Figure(about, CamshaftTorque.missing("effective length of the arm")));
    } else {
      figures.add(new Figure(about, AreaTimesLength.of(area, arm.get()).working()));
      figures.add(new Figure(about, torqueWork(bench)));
      wheel(bench, force, arm.get()).ifPresent(wheel -> figures.add(new Figure(about, wheel)));
    }
  }

  /** With the drum at its nominal size and a friction that both wheels are taken to have. */
  private static Optional<Working> wheel(Bench bench, PushRodForce force, Length arm) {
    Optional<Length> rolling = bench.positive(Size.ROLLING_RADIUS);
    return bench
        .layout()
        .drumDiameter()
        .map(CamRotation::onRadius)
        .flatMap(drum -> rolling.map(tyre -> new WheelForce.Sizes(arm, bench.lift(), drum, tyre)))
        .map(sizes -> WheelForce.of(force.force(), sizes, COMMON_FRICTION).working())
        .map(working -> working.missing("friction of the lining; 0.35 taken for every wheel"));
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
