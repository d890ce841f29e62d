package org.brakerules.linter.internal.check;

import java.util.HashSet;
import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Constraint;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.model.text.NearestName;

/** A variable is named before it is used. */
final class VariableCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    Set<String> named = new HashSet<>();
    for (Pattern pattern : rule.patterns()) {
      for (Constraint constraint : pattern.constraints()) {
        constraint.comparisons().stream()
            .filter(comparison -> comparison.valueKind() == ValueKind.VARIABLE)
            .map(comparison -> comparison.value().get(0))
            .filter(variable -> !named.contains(variable.text()))
            .forEach(variable -> add(rule, variable, named, findings));
        constraint.binding().ifPresent(binding -> named.add(binding.variable().text()));
      }
    }
  }

  private static void add(AuthoredRule rule, Token variable, Set<String> named, Findings findings) {
    findings.add(
        LintKind.UNKNOWN_VARIABLE,
        rule,
        variable,
        variable.text() + " is not named by any pattern before",
        NearestName.of(variable.text(), named)
            .map(near -> "write " + near)
            .orElse("name it in a pattern before: " + variable.text() + " : property"));
  }
}
