package org.brakerules.linter.internal.check;

import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.cases.AuthoredCase;
import org.brakerules.linter.internal.cases.AuthoredCase.Word;
import org.brakerules.linter.internal.cases.CaseKey;

/** The rules and inspection points that a case names are there. */
final class CaseRuleCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    Set<String> rules = base.ruleIds();
    Set<String> points = base.pointIds();
    base.cases()
        .forEach(
            one -> {
              rules(one)
                  .filter(rule -> !rules.contains(rule.text()))
                  .forEach(rule -> addRule(one, rule, rules, findings));
              one.list(CaseKey.NEEDS).stream()
                  .filter(point -> !points.contains(point.text()))
                  .forEach(point -> addPoint(one, point, points, findings));
            });
  }

  private static Stream<Word> rules(AuthoredCase one) {
    return Stream.of(one.list(CaseKey.FIRES), one.list(CaseKey.NEAR), one.names(CaseKey.SPEAKS))
        .flatMap(words -> words.stream());
  }

  private static void addRule(AuthoredCase one, Word rule, Set<String> known, Findings findings) {
    findings.add(
        LintKind.CASE_RULE,
        rule.spot(),
        one.says("there is no rule \"" + rule.text() + "\""),
        Remedy.known(rule.text(), known, "write the rule first, or name one that is there"));
  }

  private static void addPoint(AuthoredCase one, Word point, Set<String> known, Findings findings) {
    findings.add(
        LintKind.UNKNOWN_POINT,
        point.spot(),
        one.says("there is no inspection point \"" + point.text() + "\""),
        Remedy.known(point.text(), known, "add the point first, or name one that is there"));
  }
}
