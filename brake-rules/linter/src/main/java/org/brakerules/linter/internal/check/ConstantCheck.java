package org.brakerules.linter.internal.check;

import java.util.List;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.Vocabulary;

/** A constant exists. */
final class ConstantCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.patterns().stream()
        .flatMap(Pattern::comparisons)
        .filter(comparison -> comparison.valueKind() == ValueKind.CONSTANT)
        .forEach(comparison -> check(rule, comparison, findings));
  }

  private static void check(AuthoredRule rule, Comparison comparison, Findings findings) {
    String type = comparison.constantType().text();
    String name = comparison.constant().text();
    List<String> constants = Vocabulary.constantsOf(type);
    if (constants.isEmpty()) {
      findings.add(
          LintKind.UNKNOWN_CONSTANT,
          rule,
          comparison.constantType(),
          "there is no \"" + type + "\" to choose " + name + " from",
          Remedy.known(type, Vocabulary.constantTypes(), "write Sign.SEEN for a sign"));
    } else if (!constants.contains(name)) {
      findings.add(
          LintKind.UNKNOWN_CONSTANT,
          rule,
          comparison.constant(),
          type + " has no \"" + name + "\"",
          Remedy.known(name, constants, Remedy.oneOf(constants)));
    }
  }
}
