package org.brakerules.harness.cases;

import java.util.List;

/**
 * How a case came out.
 *
 * @param ruleCase the case
 * @param mismatches what was not as expected: expected, got and why; empty if all was
 */
public record CaseResult(RuleCase ruleCase, List<String> mismatches) {

  /** Keeps its own copy of the mismatches. */
  public CaseResult {
    mismatches = List.copyOf(mismatches);
  }

  /** Whether everything was as expected. */
  public boolean asExpected() {
    return mismatches.isEmpty();
  }
}
