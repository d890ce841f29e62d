package org.brakerules.internal.decide;

import java.util.List;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.decision.Verdict;

/** The rules that hold for every part: nothing is good that was not looked at. */
public enum GeneralRule {
  /** The only way to be reused. */
  ALL_LOOKED_AT("GENERAL-010", "Everything needed was looked at", Verdict.REUSE),
  /** Looks, readings or statements are missing. */
  STILL_OPEN("GENERAL-020", "Something needed is not known yet", Verdict.UNDECIDED),
  /** The brake has the part, the job does not mention it. */
  NOT_INSPECTED("GENERAL-030", "Part not inspected", Verdict.UNDECIDED),
  /** The part is not where it belongs. */
  MISSING("GENERAL-050", "Part missing", Verdict.UNDECIDED),
  /** Something wrong was found that no rule speaks of. */
  UNANSWERED("GENERAL-060", "A finding no rule answers", Verdict.UNDECIDED),
  /** The brake is not far enough apart to judge the part. */
  NOT_LAID_OPEN("GENERAL-070", "Part not laid open", Verdict.UNDECIDED);

  private static final Source PRINCIPLES =
      new Source("PRINCIPLES", "", "Principles of this rule base", Standing.DERIVED);

  private final String id;
  private final String title;
  private final Verdict verdict;

  GeneralRule(String id, String title, Verdict verdict) {
    this.id = id;
    this.title = title;
    this.verdict = verdict;
  }

  /** The id of the rule. */
  public String id() {
    return id;
  }

  /** The title of the rule. */
  public String title() {
    return title;
  }

  Reason reason(String sentence, String action, List<Evidence> evidence) {
    return new Reason(id, title, verdict, sentence, action, evidence, List.of(PRINCIPLES));
  }
}
