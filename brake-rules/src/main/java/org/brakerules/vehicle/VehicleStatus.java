package org.brakerules.vehicle;

import java.time.LocalDate;
import java.util.List;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.job.RuleSet;

/**
 * What axles and vehicle come to, as far as the job shows it. It repeats what published criteria
 * say and is no official ruling: each criterion names whom to ask.
 *
 * <pre>{@code
 * BrakeRules.standard().vehicle(job).criteria().forEach(one -> print(one.title(), one.finding()));
 * }</pre>
 *
 * @param ruleBase which rule base worked it out
 * @param reference the shop's own name for the job; may be empty
 * @param date the day of the inspection
 * @param ruleSet the rules that hold on the road
 * @param axles what must be alike at both ends, axle by axle
 * @param brakes how each brake of these axles counts, in path order, those not in the job too
 * @param criteria the published criteria of the rule set, in the order of their table
 */
public record VehicleStatus(
    RuleBaseVersion ruleBase,
    String reference,
    LocalDate date,
    RuleSet ruleSet,
    List<AxleStatus> axles,
    List<BrakeCount> brakes,
    List<CriterionStatus> criteria) {

  /** Keeps its own copies of the lists. */
  public VehicleStatus {
    axles = List.copyOf(axles);
    brakes = List.copyOf(brakes);
    criteria = List.copyOf(criteria);
  }
}
