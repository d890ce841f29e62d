package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Metadata;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/** Metadata is one text in brackets; keys and values inside break the rule compiler. */
final class MetadataFormCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    for (Metadata entry : rule.block().metadata()) {
      boolean quotesAreWrong = entry.content().stream().anyMatch(MetadataFormCheck::hasWrongQuotes);
      if (entry.text().isEmpty() && !quotesAreWrong) {
        findings.add(
            LintKind.METADATA_FORM,
            rule,
            entry.key(),
            "@" + entry.key().text() + " " + fault(entry),
            "write @" + entry.key().text() + "(\"...\"), one text in double quotes");
      }
    }
  }

  private static boolean hasWrongQuotes(Token token) {
    return token.is(Kind.UNCLOSED) || token.is(Kind.SINGLE_QUOTED);
  }

  private static String fault(Metadata entry) {
    if (entry.content().isEmpty()) {
      return "says nothing";
    }
    return entry.content().stream().anyMatch(token -> token.is("="))
        ? "has keys and values"
        : "holds something else than one text";
  }
}
