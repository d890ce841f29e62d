package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.Vocabulary;

/** The absence of a finding proves nothing, and it would make reasons depend on the rule order. */
final class NegatedFactCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.patterns().stream()
        .filter(Pattern::negated)
        .filter(pattern -> Vocabulary.MADE_BY_FINDINGS.contains(pattern.type()))
        .forEach(
            pattern ->
                findings.add(
                    LintKind.NEGATED_FACT,
                    rule,
                    pattern.offset(),
                    "not stands before "
                        + pattern.type()
                        + "; that nothing was found proves nothing",
                    "use not before a part or Brake only; say what was found instead"));
  }
}
