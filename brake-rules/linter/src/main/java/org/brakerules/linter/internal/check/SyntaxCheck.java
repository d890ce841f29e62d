package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;

/** A rule the parser of the rule engine refuses. */
final class SyntaxCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.mistakes().forEach(mistake -> findings.add(LintKind.SYNTAX, mistake, rule.id()));
  }
}
