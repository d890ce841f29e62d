package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/** A quote that is never closed can swallow the conditions, so that a rule fires on anything. */
final class QuoteCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    for (Token token : rule.block().tokens()) {
      if (token.is(Kind.UNCLOSED)) {
        findings.add(
            LintKind.UNCLOSED_QUOTE,
            rule,
            token,
            "the quote before \""
                + start(token.text().substring(1))
                + "\" is not closed on its line",
            "close it with \" on the same line; inside a sentence leave quotes out");
      } else if (token.is(Kind.SINGLE_QUOTED)) {
        findings.add(
            LintKind.SINGLE_QUOTE,
            rule,
            token,
            token.text() + " stands in single quotes",
            "write \"" + token.value() + "\"");
      }
    }
  }

  private static String start(String text) {
    String stripped = text.strip();
    return stripped.length() <= 20 ? stripped : stripped.substring(0, 20).strip() + "...";
  }
}
