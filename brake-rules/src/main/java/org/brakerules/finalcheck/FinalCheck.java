package org.brakerules.finalcheck;

import java.time.LocalDate;
import java.util.List;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.job.RuleSet;

/**
 * The final check of a job: every check that its plan needs, and whether the vehicle goes.
 *
 * @param ruleBase the rule base whose decisions and limits were taken
 * @param reference the shop's own name for the job; may be empty
 * @param date the day of the inspection
 * @param ruleSet the rules that hold on the road
 * @param places the wheel ends in path order, then the vehicle
 */
public record FinalCheck(
    RuleBaseVersion ruleBase,
    String reference,
    LocalDate date,
    RuleSet ruleSet,
    List<PlaceResult> places) {

  /** Keeps its own copy of the places. */
  public FinalCheck {
    places = List.copyOf(places);
  }

  /** Whether every wheel end and the vehicle are released. */
  public boolean released() {
    return places.stream().allMatch(PlaceResult::released);
  }
}
