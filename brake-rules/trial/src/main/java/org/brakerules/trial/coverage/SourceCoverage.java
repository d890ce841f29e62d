package org.brakerules.trial.coverage;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What rests on one source.
 *
 * @param id the id, such as {@code US-49-CFR-393.47}
 * @param title the title a reader can look for
 * @param standing how far it can be relied on, in words
 * @param clauses its clauses that something rests on; empty if nothing does
 */
public record SourceCoverage(
    String id, String title, String standing, List<ClauseCoverage> clauses) {

  /** Keeps its own copy of the clauses. */
  public SourceCoverage {
    clauses = List.copyOf(clauses);
  }

  /** The same source under some rules and rows of limits alone; empty if they rest on others. */
  Optional<SourceCoverage> under(Set<String> resting) {
    List<ClauseCoverage> left =
        clauses.stream()
            .map(clause -> clause.under(resting))
            .filter(clause -> !clause.rules().isEmpty() || !clause.limits().isEmpty())
            .toList();
    return left.isEmpty()
        ? Optional.empty()
        : Optional.of(new SourceCoverage(id, title, standing, left));
  }
}
