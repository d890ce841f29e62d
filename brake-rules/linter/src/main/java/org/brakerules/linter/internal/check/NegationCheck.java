package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Constraint;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token;

/** A negated bracket also holds where nobody looked or measured. */
final class NegationCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.constraints()
        .filter(constraint -> !constraint.readable())
        .forEach(constraint -> check(rule, constraint, findings));
  }

  private static void check(AuthoredRule rule, Constraint constraint, Findings findings) {
    for (Token token : constraint.tokens()) {
      if (token.is("!")) {
        findings.add(
            LintKind.NEGATED_SIGN,
            rule,
            token,
            "! also holds where nobody looked",
            "say what was seen: property == Sign.SEEN");
      }
    }
  }
}
