package org.brakerules.model.decision;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Why a part got its decision: one rule, with what it rests on.
 *
 * @param rule the id of the rule, such as {@code CAMSHAFT-BUSHING-010}
 * @param title the title of the rule
 * @param verdict what the rule says
 * @param sentence the finding in one sentence, with the values of this job
 * @param action what to do, in one sentence; empty if there is nothing to do
 * @param evidence what the reason rests on
 * @param source where the rule comes from
 */
public record Reason(
    String rule,
    String title,
    Verdict verdict,
    String sentence,
    String action,
    List<Evidence> evidence,
    List<Source> source) {

  /** Keeps its own copies of the lists. */
  public Reason {
    evidence = List.copyOf(evidence);
    source = List.copyOf(source);
  }

  /** Written out, as is its hash: what Java makes for a record is put together at first use. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Reason that
        && rule.equals(that.rule)
        && title.equals(that.title)
        && verdict == that.verdict
        && sentence.equals(that.sentence)
        && action.equals(that.action)
        && evidence.equals(that.evidence)
        && source.equals(that.source);
  }

  @Override
  public int hashCode() {
    return 31 * rule.hashCode() + sentence.hashCode();
  }

  /** Whether it rests on another part being replaced. */
  public boolean isConsequence() {
    for (Evidence one : evidence) {
      if (one instanceof Evidence.AlsoReplaced) {
        return true;
      }
    }
    return false;
  }
}
