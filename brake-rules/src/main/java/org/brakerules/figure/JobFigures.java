package org.brakerules.figure;

import java.time.LocalDate;
import java.util.List;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.job.RuleSet;

/**
 * Everything that can be worked out from the readings of a job.
 *
 * @param ruleBase the rule base whose limits were taken
 * @param reference the shop's own name for the job; may be empty
 * @param date the day of the inspection
 * @param ruleSet the rules that hold on the road
 * @param wheelEnds the figures of each wheel end, in path order
 * @param vehicle what was worked out over several wheel ends
 */
public record JobFigures(
    RuleBaseVersion ruleBase,
    String reference,
    LocalDate date,
    RuleSet ruleSet,
    List<WheelEndFigures> wheelEnds,
    List<Figure> vehicle) {

  /** Keeps its own copies of the lists. */
  public JobFigures {
    wheelEnds = List.copyOf(wheelEnds);
    vehicle = List.copyOf(vehicle);
  }
}
