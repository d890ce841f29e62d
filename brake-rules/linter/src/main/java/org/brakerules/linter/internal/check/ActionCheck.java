package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.VerdictWord;
import org.brakerules.linter.internal.text.Token;

/** A rule says one thing of one part. */
final class ActionCheck implements RuleCheck {

  private static final Set<String> CHANGES =
      Set.of("modify", "update", "insert", "insertLogical", "delete", "retract");

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    if (rule.conditions().isEmpty()) {
      return; // first the rule must be readable
    }
    List<Token> action = rule.block().action();
    List<Token> changes =
        action.stream().filter(token -> CHANGES.stream().anyMatch(token::is)).toList();
    SeveralVerdicts verdicts = new SeveralVerdicts(rule);
    if (!changes.isEmpty()) {
      findings.add(
          LintKind.FACT_CHANGE,
          rule,
          changes.get(0),
          changes.get(0).text() + " changes the facts of the job",
          "say one verdict; what follows from it rests on Replaced");
    } else if (verdicts.count() > 1) {
      findings.add(
          LintKind.TWO_VERDICTS,
          rule,
          action.get(0),
          "the rule says " + verdicts.count() + " verdicts",
          verdicts.remedy(RuleIds.around(rule, base)));
    } else {
      checkVerdict(rule, action, findings);
    }
  }

  private static void checkVerdict(AuthoredRule rule, List<Token> action, Findings findings) {
    VerdictCall call = new VerdictCall(action);
    if (action.isEmpty()) {
      add(rule, rule.block().offsetOf("then"), "the rule says nothing after then", findings);
    } else if (call.word().isEmpty()) {
      add(
          rule,
          action.get(0).offset(),
          "after then stands something else than one verdict",
          findings);
    } else if (call.verdict().isEmpty()) {
      Token word = call.word().get();
      findings.add(
          LintKind.UNKNOWN_VERDICT,
          rule,
          word,
          "there is no verdict \"" + word.text() + "\"",
          Remedy.known(word.text(), VerdictWord.words(), ""));
    } else if (!call.isWhole()) {
      findings.add(
          LintKind.ACTION,
          rule,
          action.get(0),
          "the verdict " + call.verdict().get().word() + " is not said in its form",
          "write " + call.verdict().get().call() + " and nothing else");
    }
  }

  private static void add(AuthoredRule rule, int offset, String message, Findings findings) {
    findings.add(
        LintKind.ACTION,
        rule,
        offset,
        message,
        "write one verdict of $part, such as " + VerdictWord.REPLACE.call());
  }
}
