package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token.Kind;

/** A rule without conditions fires on every job. */
final class EmptyConditionsCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    boolean empty =
        rule.conditions()
            .filter(read -> read.patterns().isEmpty() && read.constructs().isEmpty())
            .isPresent();
    if (empty) {
      int when = rule.block().offsetOf("when");
      boolean hidden =
          rule.block().tokens().stream()
              .anyMatch(token -> token.is(Kind.COMMENT) && token.offset() > when);
      findings.add(
          LintKind.EMPTY_CONDITIONS,
          rule,
          when,
          hidden
              ? "the conditions are commented out, so the rule fires always"
              : "there are no conditions, so the rule fires always",
          "write at least the part: $part : Camshaft( flat == Sign.SEEN )");
    }
  }
}
