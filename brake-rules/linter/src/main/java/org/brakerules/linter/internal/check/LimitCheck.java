package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.Vocabulary;
import org.brakerules.linter.internal.text.Token;

/** A pattern of a reading beyond a limit names the limit, and the limit exists. */
final class LimitCheck implements RuleCheck {

  private static final String LIMIT = "limit";

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.patterns().stream()
        .filter(pattern -> pattern.type().equals(Vocabulary.BEYOND_LIMIT))
        .forEach(pattern -> check(rule, pattern, base, findings));
  }

  private static void check(AuthoredRule rule, Pattern pattern, RuleBase base, Findings findings) {
    pattern
        .comparisons()
        .filter(comparison -> comparison.property().is(LIMIT))
        .filter(comparison -> comparison.valueKind() == ValueKind.TEXT)
        .map(comparison -> comparison.value().get(0))
        .filter(limit -> !base.limitIds().contains(limit.value()))
        .forEach(limit -> addUnknown(rule, limit, base, findings));
    boolean named =
        pattern.constraints().stream()
            .anyMatch(one -> one.tokens().stream().anyMatch(token -> token.is(LIMIT)));
    if (!named) {
      findings.add(
          LintKind.UNNAMED_LIMIT,
          rule,
          pattern.typeOffset(),
          "BeyondLimit does not say which limit, so any reading beyond any limit would do",
          "write BeyondLimit( limit == \"component.property.max\", ... )");
    }
  }

  private static void addUnknown(AuthoredRule rule, Token limit, RuleBase base, Findings findings) {
    findings.add(
        LintKind.UNKNOWN_LIMIT,
        rule,
        limit,
        "there is no limit \"" + limit.value() + "\"",
        Remedy.known(
            limit.value(),
            base.limitIds(),
            "add it to a table of limits, or name one that is there"));
  }
}
