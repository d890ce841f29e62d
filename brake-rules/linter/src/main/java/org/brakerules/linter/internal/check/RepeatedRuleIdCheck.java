package org.brakerules.linter.internal.check;

import java.util.HashMap;
import java.util.Map;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Spot;

/** An id names one rule in the whole rule base. */
final class RepeatedRuleIdCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    Map<String, AuthoredRule> first = new HashMap<>();
    base.rules()
        .filter(rule -> !rule.id().isEmpty())
        .forEach(
            rule -> {
              AuthoredRule other = first.putIfAbsent(rule.id(), rule);
              if (other != null) {
                Spot there = other.spot(other.block().nameOffset());
                findings.add(
                    LintKind.REPEATED_RULE_ID,
                    rule,
                    rule.block().nameOffset(),
                    rule.id()
                        + " is there twice, first in "
                        + there.file()
                        + " line "
                        + there.line(),
                    "take one out if the rule was only moved; a new rule takes the next free id, "
                        + RuleIds.around(rule, base).next()
                        + ", at the end of the file");
              }
            });
  }
}
