package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.CurlyQuotes;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleFile;

/** A curly quote closes nothing and opens nothing. */
final class CurlyQuoteCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    base.ruleFiles().forEach(file -> check(file, findings));
  }

  private static void check(RuleFile file, Findings findings) {
    String text = file.source().text();
    for (AuthoredRule rule : file.rules()) {
      for (int at = rule.block().start(); at < rule.block().end(); at++) {
        if (CurlyQuotes.is(text.charAt(at))) {
          findings.add(
              LintKind.CURLY_QUOTE,
              rule,
              at,
              text.charAt(at) + " is a curly quote",
              remedy(rule.source().text().charAt(at)));
        }
      }
    }
  }

  /** What to write, from how the reader took the quote. */
  private static String remedy(char read) {
    return CurlyQuotes.is(read)
        ? "leave it out; inside a sentence stand no quotes"
        : "write the straight " + read;
  }
}
