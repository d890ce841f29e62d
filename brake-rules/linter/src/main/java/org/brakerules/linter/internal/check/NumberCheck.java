package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/** Numbers stand in the tables of limits, dated and with their source. */
final class NumberCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.patterns().forEach(pattern -> check(rule, pattern, findings));
    rule.block().action().stream()
        .filter(token -> token.is(Kind.NUMBER))
        .forEach(
            token ->
                findings.add(
                    LintKind.NUMBER,
                    rule,
                    token,
                    "the number " + token.text() + " stands after then",
                    "take it out; a verdict has no number"));
  }

  private static void check(AuthoredRule rule, Pattern pattern, Findings findings) {
    pattern.constraints().stream()
        .flatMap(constraint -> constraint.tokens().stream())
        .filter(token -> token.is(Kind.NUMBER) && !isToldAsWrongValue(pattern, token))
        .forEach(
            token ->
                findings.add(
                    LintKind.NUMBER,
                    rule,
                    token,
                    "the number " + token.text() + " stands in the conditions",
                    "put it into "
                        + rule.folder()
                        + ".limits.csv and write BeyondLimit( limit == \"its id\","
                        + " $wheelEnd : wheelEnd )"));
  }

  private static boolean isToldAsWrongValue(Pattern pattern, Token number) {
    return pattern
        .comparisons()
        .filter(comparison -> comparison.value().contains(number))
        .anyMatch(comparison -> ValueCheck.isWrong(pattern, comparison));
  }
}
