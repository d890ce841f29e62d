package org.brakerules.compare;

import java.util.List;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.JobDecision;

/**
 * One job decided under two rule sets.
 *
 * <pre>{@code
 * BrakeRules.standard().compare(job, new RuleSet("quebec")).differing().forEach(...);
 * }</pre>
 *
 * @param here the decision under the rule set of the job
 * @param there the decision under the other rule set
 */
public record RuleSetComparison(JobDecision here, JobDecision there) {

  /**
   * One part under both.
   *
   * @param here its decision under the rule set of the job
   * @param there its decision under the other
   */
  public record Pair(Decision here, Decision there) {

    /** Whether the two differ in disposition, hold, road answer, or the rules that spoke. */
    public boolean differs() {
      return here.disposition() != there.disposition()
          || here.hold() != there.hold()
          || here.road() != there.road()
          || !rules(here).equals(rules(there));
    }

    private static List<String> rules(Decision decision) {
      return decision.reasons().stream().map(reason -> reason.rule()).sorted().toList();
    }
  }

  /**
   * Both decisions of every part, in path order.
   *
   * @throws IllegalStateException if the two decide different parts, which no two rule sets do
   */
  public List<Pair> pairs() {
    return here.decisions().stream()
        .map(
            one ->
                new Pair(
                    one,
                    there
                        .decision(one.part())
                        .orElseThrow(
                            () -> new IllegalStateException(one.part() + " is decided once only"))))
        .toList();
  }

  /** The parts on which the two differ, in path order. */
  public List<Pair> differing() {
    return pairs().stream().filter(Pair::differs).toList();
  }
}
