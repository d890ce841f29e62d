package org.brakerules.linter.internal.check;

import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Constraint;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/** A condition is a comparison of a property, several joined by ||, or a name for a property. */
final class ConditionFormCheck implements RuleCheck {

  /** What other checks explain better. */
  private static final Set<String> TOLD_ELSEWHERE = Set.of("!", "<", ">", "<=", ">=");

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.constraints()
        .filter(constraint -> !constraint.readable())
        .filter(constraint -> constraint.tokens().stream().noneMatch(ConditionFormCheck::isTold))
        .forEach(
            constraint ->
                findings.add(
                    LintKind.CONDITION_FORM,
                    rule,
                    constraint.offset(),
                    "\"" + constraint.text() + "\" is no condition of the rule language",
                    remedy(constraint)));
  }

  private static boolean isTold(Token token) {
    return TOLD_ELSEWHERE.contains(token.text()) || token.is(Kind.NUMBER);
  }

  private static String remedy(Constraint constraint) {
    if (constraint.tokens().stream().anyMatch(token -> token.is("&&"))) {
      return "write a comma instead of &&";
    }
    return "write property == Constant, several joined by ||, or $name : property";
  }
}
