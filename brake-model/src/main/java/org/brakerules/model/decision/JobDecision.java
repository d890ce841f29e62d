package org.brakerules.model.decision;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;

/**
 * The answer to a job. The same job and rule base give the same answer, to the byte of its JSON.
 *
 * @param ruleBase which rule base decided
 * @param reference the shop's own name for the job
 * @param date the day of the inspection
 * @param ruleSet the rules that hold on the road
 * @param scope how far the brakes were taken apart
 * @param decisions one decision per part, in path order
 * @param next what to look at and measure next: what bears on most parts comes first
 * @param cautions the cautions for this work
 */
public record JobDecision(
    RuleBaseVersion ruleBase,
    String reference,
    LocalDate date,
    RuleSet ruleSet,
    Scope scope,
    List<Decision> decisions,
    List<NextLook> next,
    List<Caution> cautions) {

  /** Keeps its own copies of the lists. */
  public JobDecision {
    decisions = List.copyOf(decisions);
    next = List.copyOf(next);
    cautions = List.copyOf(cautions);
  }

  /** The decision on the part at this path; empty if the job has no such part. */
  public Optional<Decision> decision(Place part) {
    return decisions.stream().filter(decision -> decision.part().equals(part)).findFirst();
  }

  /** The decisions that stop work. */
  public List<Decision> holds() {
    return decisions.stream().filter(Decision::hold).toList();
  }

  /** Whether there is a decision, every part is decided, and none stops work. */
  public boolean complete() {
    return !decisions.isEmpty()
        && decisions.stream()
            .noneMatch(one -> one.hold() || one.disposition() == Disposition.UNDECIDED);
  }
}
