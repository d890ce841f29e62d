package org.brakerules.linter.internal.check;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.VerdictWord;
import org.brakerules.linter.internal.text.Spot;
import org.brakerules.model.decision.Verdict;

/** On the same finding a part is replaced, adjusted or cleaned: one of them. */
final class ConflictCheck implements Check {

  private static final Comparator<AuthoredRule> BY_WEIGHT =
      Comparator.comparing(rule -> verdict(rule).map(VerdictWord::verdict).orElse(Verdict.REUSE));

  @Override
  public void check(RuleBase base, Findings findings) {
    base.rules()
        .filter(rule -> !rule.patterns().isEmpty())
        .filter(rule -> verdict(rule).filter(VerdictWord::settles).isPresent())
        .collect(Collectors.groupingBy(RuleForm::of, LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(rules -> check(rules, findings));
  }

  private static void check(List<AuthoredRule> sameConditions, Findings findings) {
    AuthoredRule worst = sameConditions.stream().max(BY_WEIGHT).orElseThrow();
    sameConditions.stream()
        .filter(rule -> BY_WEIGHT.compare(rule, worst) < 0)
        .forEach(rule -> add(rule, worst, findings));
  }

  private static Optional<VerdictWord> verdict(AuthoredRule rule) {
    return new VerdictCall(rule.block().action()).verdict();
  }

  private static String word(AuthoredRule rule) {
    return verdict(rule).map(VerdictWord::word).orElse("");
  }

  private static void add(AuthoredRule rule, AuthoredRule worst, Findings findings) {
    Spot there = worst.spot(worst.block().nameOffset());
    findings.add(
        LintKind.CONFLICT,
        rule,
        rule.block().nameOffset(),
        "%s in %s line %d says %s on the same conditions; the worst verdict wins, and this %s never counts"
            .formatted(worst.id(), there.file(), there.line(), word(worst), word(rule)),
        "take %s out, the milder one, unless a condition is to tell the two apart"
            .formatted(rule.id()));
  }
}
