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
 * @param fails the cases in which everything else holds and it fails, and the rule keeps silent;
 *     alternatives fail together; those in which it holds for no other part come first
 * @param failsBeside the cases in which it fails so for one part, while the rule fires for another,
 *     as at the other end of the axle
 */
public record ConditionCoverage(
    String id,
    String text,
    List<CaseName> holds,
    List<CaseName> fails,
    List<CaseName> failsBeside) {

  /** Keeps its own copies of the lists. */
  public ConditionCoverage {
    holds = List.copyOf(holds);
    fails = List.copyOf(fails);
    failsBeside = List.copyOf(failsBeside);
  }

  /** Whether a case shows that without it the rule would speak of a part it keeps silent on. */
  public boolean isSeenToFail() {
    return !fails.isEmpty() || !failsBeside.isEmpty();
  }

  /** Whether cases show both outcomes. */
  public boolean isShown() {
    return !holds.isEmpty() && isSeenToFail();
  }
}
