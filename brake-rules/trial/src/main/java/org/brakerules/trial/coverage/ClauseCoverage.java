package org.brakerules.trial.coverage;

import java.util.List;
import java.util.Set;

/**
 * What rests on one clause of a source.
 *
 * @param clause the paragraph or page; empty for the source as a whole
 * @param rules the ids of rules
 * @param limits the rows of limits
 * @param others cautions and rule sets, such as {@code caution advice-only}
 */
public record ClauseCoverage(
    String clause, List<String> rules, List<String> limits, List<String> others) {

  /** Keeps its own copies of the lists. */
  public ClauseCoverage {
    rules = List.copyOf(rules);
    limits = List.copyOf(limits);
    others = List.copyOf(others);
  }

  /** The same clause under some rules and rows of limits alone. */
  ClauseCoverage under(Set<String> resting) {
    return new ClauseCoverage(
        clause,
        rules.stream().filter(resting::contains).toList(),
        limits.stream().filter(resting::contains).toList(),
        List.of());
  }
}
