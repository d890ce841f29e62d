package org.brakerules.trial.coverage;

import java.util.List;

/**
 * Who reads one inspection point.
 *
 * @param id the id, such as {@code camshaft-bushing.radial-play}
 * @param component the component whose table it stands in
 * @param rules the rules with a condition on it
 * @param limits the rows of limits that it is held against, or that it chooses between
 * @param askedBy the rules that ask for it
 * @param needed when a decision needs it, in words
 */
public record PointCoverage(
    String id,
    String component,
    List<String> rules,
    List<String> limits,
    List<String> askedBy,
    String needed) {

  /** Keeps its own copies of the lists. */
  public PointCoverage {
    rules = List.copyOf(rules);
    limits = List.copyOf(limits);
    askedBy = List.copyOf(askedBy);
  }

  /** Whether a rule or a limit reads it, or a rule asks for it. */
  public boolean isRead() {
    return !rules.isEmpty() || !limits.isEmpty() || !askedBy.isEmpty();
  }
}
