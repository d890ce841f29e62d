package org.brakerules.work;

import java.time.LocalDate;
import java.util.List;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.parts.OtherEnd;

/**
 * The work of a job in one order, from the vehicle's arrival to the last proof. No step comes
 * before one that it needs.
 *
 * @param ruleBase the rule base that decided
 * @param reference the shop's own name for the job; may be empty
 * @param date the day of the inspection
 * @param ruleSet the rules that hold on the road
 * @param scope how far the brakes were taken apart for the inspection
 * @param cautions the cautions for this work; each stands again at its steps
 * @param stops the wheel ends at which the plan goes no further, and why. While there is one, no
 *     brake of the vehicle is set and none is proved; while one is on hold, no air comes to any.
 *     One that stops before any jack stops the other end of its axle as well
 * @param otherEnds the ends of axles that are not in the job and that its work reaches; the plan
 *     has no steps for them, and the vehicle is not released without them
 * @param toState what the job must state, because steps hang on it
 * @param steps the steps in their order
 */
public record WorkPlan(
    RuleBaseVersion ruleBase,
    String reference,
    LocalDate date,
    RuleSet ruleSet,
    Scope scope,
    List<Caution> cautions,
    List<Stop> stops,
    List<OtherEnd> otherEnds,
    List<ToState> toState,
    List<WorkStep> steps) {

  /** Keeps its own copies of the lists. */
  public WorkPlan {
    cautions = List.copyOf(cautions);
    stops = List.copyOf(stops);
    otherEnds = List.copyOf(otherEnds);
    toState = List.copyOf(toState);
    steps = List.copyOf(steps);
  }

  /**
   * The steps of one wheel end in their order: those of the vehicle, of its axle, and its own. A
   * wheel end that stops has none beyond its stop; what the vehicle or the axle has there is for
   * others.
   */
  public List<WorkStep> forWheelEnd(WheelEndPath wheelEnd) {
    String path = wheelEnd.toString();
    int last =
        stops.stream()
            .filter(stop -> stop.wheelEnd().equals(wheelEnd))
            .mapToInt(Stop::step)
            .findFirst()
            .orElse(Integer.MAX_VALUE);
    return steps.stream()
        .filter(step -> step.number() <= last)
        .filter(
            step ->
                step.level() == WorkLevel.VEHICLE
                    || step.on().equals(path)
                    || path.startsWith(step.on() + "/"))
        .toList();
  }

  /**
   * Whether no wheel end stops or is left out, and nothing must be decided or stated on the way.
   */
  public boolean isWholeWork() {
    return stops.isEmpty()
        && otherEnds.isEmpty()
        && toState.isEmpty()
        && steps.stream().noneMatch(WorkStep::decides);
  }

  /** The points at which nobody goes on until they pass. */
  public List<WorkStep> holdPoints() {
    return steps.stream().filter(WorkStep::hold).toList();
  }
}
