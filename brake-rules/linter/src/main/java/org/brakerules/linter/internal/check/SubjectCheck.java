package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.FactType;

/** One pattern names the part of which the rule speaks. */
final class SubjectCheck implements RuleCheck {

  static final String SUBJECT = "$part";

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    if (rule.patterns().isEmpty()) {
      return;
    }
    long subjects = rule.patterns().stream().filter(SubjectCheck::isSubject).count();
    if (subjects != 1) {
      findings.add(
          LintKind.ACTION,
          rule,
          rule.block().offsetOf("when"),
          subjects == 0 ? "no pattern names $part" : "$part is named twice",
          "write $part : before the one pattern of the part that the verdict is of");
      return;
    }
    rule.patterns().stream()
        .filter(SubjectCheck::isSubject)
        .filter(pattern -> !pattern.fact().map(FactType::isPart).orElse(true))
        .forEach(
            pattern ->
                findings.add(
                    LintKind.ACTION,
                    rule,
                    pattern.offset(),
                    pattern.type() + " is no part, so no verdict can be said of it",
                    "write $part : before a pattern of a part"));
  }

  static boolean isSubject(Pattern pattern) {
    return !pattern.negated() && pattern.variable().filter(SUBJECT::equals).isPresent();
  }
}
