package org.brakerules.model.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.WheelEndPath;
import org.jspecify.annotations.Nullable;

/**
 * Puts a job together wheel end by wheel end; units and axles follow from the wheel ends' names.
 */
public final class BrakeJobBuilder {

  private record AxleName(String unit, int number) {}

  private String reference = "";
  private @Nullable LocalDate date;
  private @Nullable RuleSet ruleSet;
  private @Nullable Scope scope;
  private Acceptance acceptance = Acceptance.GUARDED_IF_STATED;
  private final List<ShimsAtHand> shimsAtHand = new ArrayList<>();
  private final List<StatedSize> sizes = new ArrayList<>();
  private final List<EarlierLining> earlierLinings = new ArrayList<>();
  private final List<MakersLimit> makersLimits = new ArrayList<>();
  private final Map<String, LocalDate> builtOn = new LinkedHashMap<>();
  private final Map<AxleName, AxleKind> axleKinds = new LinkedHashMap<>();
  private final Map<String, Map<Integer, List<WheelEnd>>> wheelEnds = new LinkedHashMap<>();

  BrakeJobBuilder() {}

  /** Sets the shop's own name for the job. */
  public BrakeJobBuilder reference(String text) {
    reference = text;
    return this;
  }

  /** Sets the day of the inspection. */
  public BrakeJobBuilder date(LocalDate day) {
    date = day;
    return this;
  }

  /** Sets the rules that hold on the road, such as {@code us-federal}. */
  public BrakeJobBuilder ruleSet(String id) {
    ruleSet = new RuleSet(id);
    return this;
  }

  /** Sets how far the brakes have been taken apart. */
  public BrakeJobBuilder scope(Scope reached) {
    scope = reached;
    return this;
  }

  /**
   * Sets how the uncertainty of a reading counts; {@link Acceptance#GUARDED_IF_STATED} if it is not
   * set.
   */
  public BrakeJobBuilder acceptance(Acceptance rule) {
    acceptance = rule;
    return this;
  }

  /** Adds shims that may go in to set the end play. */
  public BrakeJobBuilder shimsAtHand(ShimsAtHand shims) {
    shimsAtHand.add(shims);
    return this;
  }

  /** Adds a size for the figures. */
  public BrakeJobBuilder size(StatedSize size) {
    sizes.add(size);
    return this;
  }

  /** Adds how thick a lining was at an earlier inspection. */
  public BrakeJobBuilder earlierLining(EarlierLining lining) {
    earlierLinings.add(lining);
    return this;
  }

  /** Adds a limit of the maker. */
  public BrakeJobBuilder makersLimit(MakersLimit limit) {
    makersLimits.add(limit);
    return this;
  }

  /** Sets the day a unit was built. */
  public BrakeJobBuilder builtOn(String unit, LocalDate day) {
    builtOn.put(unit, day);
    return this;
  }

  /** Sets what an axle does. */
  public BrakeJobBuilder axle(String unit, int number, AxleKind kind) {
    axleKinds.put(new AxleName(unit, number), kind);
    return this;
  }

  /** Adds a wheel end with the parts that were looked at. */
  public BrakeJobBuilder wheelEnd(WheelEndPath path, Layout layout, Part... parts) {
    return wheelEnd(new WheelEnd(path, layout, List.of(parts)));
  }

  /** Adds a wheel end. */
  public BrakeJobBuilder wheelEnd(WheelEnd end) {
    wheelEnds
        .computeIfAbsent(end.path().unit(), unit -> new LinkedHashMap<>())
        .computeIfAbsent(end.path().axle(), axle -> new ArrayList<>())
        .add(end);
    return this;
  }

  /**
   * Builds the job.
   *
   * @throws IllegalStateException if date, rule set or scope is not set
   * @throws IllegalArgumentException if the wheel ends do not make a vehicle, see {@link BrakeJob}
   */
  public BrakeJob build() {
    return new BrakeJob(
        reference,
        required(date, "date"),
        required(ruleSet, "rule set"),
        required(scope, "scope"),
        acceptance,
        shimsAtHand,
        sizes,
        earlierLinings,
        makersLimits,
        wheelEnds.entrySet().stream().map(unit -> unit(unit.getKey(), unit.getValue())).toList());
  }

  private VehicleUnit unit(String name, Map<Integer, List<WheelEnd>> axles) {
    return new VehicleUnit(
        name,
        Optional.ofNullable(builtOn.get(name)),
        axles.entrySet().stream().map(axle -> axle(name, axle.getKey(), axle.getValue())).toList());
  }

  private Axle axle(String unit, int number, List<WheelEnd> ends) {
    AxleKind kind = axleKinds.getOrDefault(new AxleName(unit, number), AxleKind.UNKNOWN);
    return new Axle(number, kind, ends);
  }

  private static <T> T required(@Nullable T value, String name) {
    if (value == null) {
      throw new IllegalStateException("The job has no " + name + "; set it before building.");
    }
    return value;
  }
}
