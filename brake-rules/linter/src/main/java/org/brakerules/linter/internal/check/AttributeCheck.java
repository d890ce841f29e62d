package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/** Attributes make the outcome depend on the order of rules or on a clock. */
final class AttributeCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    int lastLine = 0;
    for (Token token : rule.block().attributes()) {
      int line = rule.spot(token.offset()).line();
      if (line != lastLine && !token.is(Kind.UNCLOSED)) {
        findings.add(
            LintKind.RULE_ATTRIBUTE,
            rule,
            token,
            name(rule, token) + " stands before when and is no metadata",
            "take it out; no attribute changes when or in which order a rule fires, the worst"
                + " verdict wins");
      }
      lastLine = line;
    }
  }

  private static String name(AuthoredRule rule, Token token) {
    return rule.source().text().substring(token.offset()).split("\\s", 2)[0];
  }
}
