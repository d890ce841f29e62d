package org.brakerules.model.job;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Scope;

/**
 * A brake job: the inspection a decision is asked for.
 *
 * @param reference the shop's own name for the job; may be empty
 * @param date the day of the inspection; it chooses the limits and rules in force
 * @param ruleSet the rules that hold on the road
 * @param scope how far the brakes have been taken apart
 * @param acceptance how the uncertainty of a reading counts against a limit
 * @param shimsAtHand shims that may go in to set the end play
 * @param sizes sizes stated for the figures
 * @param earlierLinings how thick linings were at an earlier inspection, for the figures
 * @param makersLimits limits of the maker that the shop has at hand
 * @param units the vehicle, or the units of the combination, with what was inspected of each
 */
public record BrakeJob(
    String reference,
    LocalDate date,
    RuleSet ruleSet,
    Scope scope,
    Acceptance acceptance,
    List<ShimsAtHand> shimsAtHand,
    List<StatedSize> sizes,
    List<EarlierLining> earlierLinings,
    List<MakersLimit> makersLimits,
    List<VehicleUnit> units) {

  /**
   * Keeps its own copies of the lists.
   *
   * @throws IllegalArgumentException if there is no unit, if two have the same name, if one of
   *     several has none, or if one was built, or a lining measured before, after the inspection
   */
  public BrakeJob {
    shimsAtHand = List.copyOf(shimsAtHand);
    sizes = List.copyOf(sizes);
    earlierLinings = List.copyOf(earlierLinings);
    makersLimits = List.copyOf(makersLimits);
    units = List.copyOf(units);
    if (units.isEmpty()) {
      throw new IllegalArgumentException("The job has no wheel end.");
    }
    if (units.stream().map(VehicleUnit::name).distinct().count() < units.size()) {
      throw new IllegalArgumentException("Two units of the job have the same name.");
    }
    if (units.size() > 1 && units.stream().anyMatch(unit -> unit.name().isEmpty())) {
      throw new IllegalArgumentException("Name each unit of a combination, such as tractor.");
    }
    units.stream().flatMap(unit -> unit.builtOn().stream()).forEach(day -> refuseAfter(date, day));
    earlierLinings.forEach(earlier -> refuseLater(date, earlier));
  }

  private static void refuseAfter(LocalDate inspected, LocalDate built) {
    if (built.isAfter(inspected)) {
      throw new IllegalArgumentException(
          "A unit built on " + built + " was not inspected on " + inspected + ".");
    }
  }

  private static void refuseLater(LocalDate inspected, EarlierLining earlier) {
    if (earlier.date().isAfter(inspected)) {
      throw new IllegalArgumentException(
          earlier.date() + " is no day before the inspection on " + inspected + ".");
    }
  }

  /** The same job under another rule set. */
  public BrakeJob under(RuleSet other) {
    return new BrakeJob(
        reference,
        date,
        other,
        scope,
        acceptance,
        shimsAtHand,
        sizes,
        earlierLinings,
        makersLimits,
        units);
  }

  /** Starts a job. */
  public static BrakeJobBuilder builder() {
    return new BrakeJobBuilder();
  }

  /** All wheel ends of the job, in the order stated. */
  public Stream<WheelEnd> wheelEnds() {
    return units.stream()
        .flatMap(unit -> unit.axles().stream())
        .flatMap(axle -> axle.wheelEnds().stream());
  }

  /** All parts of the job, in the order stated. */
  public Stream<Part> parts() {
    return wheelEnds().flatMap(end -> end.parts().stream());
  }
}
