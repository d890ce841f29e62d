package org.brakerules.calc.stroke;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.brakerules.calc.Estimate;
import org.brakerules.calc.Ratio;
import org.brakerules.calc.Working;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.quantity.Share;

/**
 * What each looseness between push rod and shoe costs in stroke. Wear that the adjuster takes up is
 * no part of it: that uses up rotation of the cam, see {@link CamRotation}.
 *
 * <p>Play in spline and gear shows as movement of the arm with the cam held. Where that was
 * measured it counts instead of the two estimates.
 *
 * @param geometry the levers
 * @param costs the cost of each looseness that was measured, in the order of {@link Looseness}
 * @param armMovement the movement at the clevis hole with the cam held; empty if not measured
 */
public record LostMotion(
    CamGeometry geometry, List<StrokeCost> costs, Optional<Length> armMovement) {

  /** Keeps its own copy of the costs. */
  public LostMotion {
    costs = List.copyOf(costs);
  }

  /**
   * Works out the cost of each play.
   *
   * @param geometry the levers
   * @param plays the plays that were measured, each where it is: at the pin, at the pitch radius of
   *     the spline, at the clevis hole for the gear, in the bushing
   * @param armMovement the movement at the clevis hole with the cam held; empty if not measured
   */
  public static LostMotion of(
      CamGeometry geometry, Map<Looseness, Length> plays, Optional<Length> armMovement) {
    List<StrokeCost> costs =
        new TreeMap<>(plays)
            .entrySet().stream()
                .map(play -> StrokeCost.of(play.getKey(), play.getValue(), geometry))
                .toList();
    return new LostMotion(geometry, costs, armMovement);
  }

  /** What all of it costs: a measured movement of the arm counts instead of its parts. */
  public Estimate<Length> total() {
    Length total = sum(Set.of());
    return new Estimate<>(total);
  }

  /** What all of it costs at the very most, each play at its worst for the stroke. */
  public Estimate<Length> most() {
    List<Length> bounds =
        costs.stream()
            .filter(cost -> armMovement.isEmpty() || !cost.isMeasuredAtArm())
            .map(cost -> cost.bound().value())
            .toList();
    Length nothing = new Length(0, unit());
    Length sum = bounds.stream().reduce(nothing, Length::plus);
    return new Estimate<>(armMovement.map(sum::plus).orElse(sum));
  }

  /** What would be left if these were cured; new parts are taken to have no play of their own. */
  public Estimate<Length> without(Set<Looseness> cured) {
    return new Estimate<>(sum(cured));
  }

  /**
   * How much of a stroke limit it uses up.
   *
   * @throws IllegalArgumentException if the limit is not above zero
   */
  public Estimate<Share> shareOf(Length strokeLimit) {
    BigDecimal percent =
        Ratio.of(total().value(), strokeLimit)
            .value()
            .movePointRight(2)
            .setScale(1, RoundingMode.HALF_EVEN);
    return new Estimate<>(new Share(percent));
  }

  /**
   * By how much the measured movement of the arm differs from what spline and gear were estimated
   * to give; empty unless both are known.
   */
  public Optional<Length> differenceAtArm() {
    List<StrokeCost> atArm = costs.stream().filter(StrokeCost::isMeasuredAtArm).toList();
    return armMovement
        .filter(measured -> !atArm.isEmpty())
        .map(measured -> measured.minus(add(atArm)));
  }

  /**
   * The looseness whose cure buys back most, by estimate and never by bound; of equals the first.
   */
  public Optional<StrokeCost> costliest() {
    return costs.stream()
        .filter(cost -> armMovement.isEmpty() || !cost.isMeasuredAtArm())
        .filter(cost -> cost.stroke().value().nanometres() > 0)
        .min(Comparator.comparing((StrokeCost cost) -> cost.stroke().value()).reversed());
  }

  /** How it was worked out. */
  public Working working() {
    return LostMotionWorking.of(this);
  }

  /** The work without a result, where something must be known first. */
  public static Working missing(String what) {
    return LostMotionWorking.start().missing(what);
  }

  private Length sum(Set<Looseness> cured) {
    List<StrokeCost> counted =
        costs.stream()
            .filter(cost -> !cured.contains(cost.looseness()))
            .filter(cost -> armMovement.isEmpty() || !cost.isMeasuredAtArm())
            .toList();
    Length sum = add(counted);
    return armMovement.map(measured -> sum.plus(atArm(measured, cured))).orElse(sum);
  }

  /** Of a measured movement no more is cured than the part was estimated to give. */
  private Length atArm(Length measured, Set<Looseness> cured) {
    List<StrokeCost> gone =
        costs.stream()
            .filter(StrokeCost::isMeasuredAtArm)
            .filter(cost -> cured.contains(cost.looseness()))
            .toList();
    Length left = gone.isEmpty() ? measured : measured.minus(add(gone));
    return left.isNegative() ? left.minus(left) : left;
  }

  private Length add(List<StrokeCost> some) {
    Length nothing = new Length(0, unit());
    return some.stream().map(cost -> cost.stroke().value()).reduce(nothing, Length::plus);
  }

  private LengthUnit unit() {
    return geometry.arm().unit();
  }
}
