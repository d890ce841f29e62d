package org.brakerules.linter.internal.check;

import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;

/** Readings are held against their limits before the rules run, exactly and once. */
final class SizeCheck implements RuleCheck {

  private static final Set<String> SIZES = Set.of("<", ">", "<=", ">=");

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.constraints()
        .flatMap(constraint -> constraint.tokens().stream())
        .filter(token -> SIZES.contains(token.text()))
        .forEach(
            token ->
                findings.add(
                    LintKind.COMPARISON,
                    rule,
                    token,
                    token.text() + " compares sizes, which rules do not do",
                    "put the limit into "
                        + rule.folder()
                        + ".limits.csv and write BeyondLimit( limit == \"its id\","
                        + " $wheelEnd : wheelEnd )"));
  }
}
