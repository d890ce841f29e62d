package org.brakerules.trial.coverage;

import java.util.List;

/**
 * What the cases show of one condition of a rule: a comparison, an alternative of several, or a
 * pattern under {@code not}.
 *
 * @param id the rule and the condition, such as {@code HOSE-020 Hose( leak == Sign.SEEN )}
 * @param text the condition as the rule file writes it
 * @param holds the cases in which the rule fires and the condition holds; of several alternatives
 *     it alone
 * @param fails the cases in which everything else holds and it fails; alternatives fail together
 */
public record ConditionCoverage(
    String id, String text, List<CaseName> holds, List<CaseName> fails) {

  /** Keeps its own copies of the lists. */
  public ConditionCoverage {
    holds = List.copyOf(holds);
    fails = List.copyOf(fails);
  }

  /** Whether cases show both outcomes. */
  public boolean isShown() {
    return !holds.isEmpty() && !fails.isEmpty();
  }
}
