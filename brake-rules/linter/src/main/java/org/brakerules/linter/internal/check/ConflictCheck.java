package org.brakerules.linter.internal.check;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.VerdictWord;
import org.brakerules.linter.internal.text.Spot;

/** On the same finding a part is replaced, adjusted or cleaned: one of them. */
final class ConflictCheck implements Check {

  private static final List<String> WORST_FIRST =
      List.of(VerdictWord.REPLACE.word(), VerdictWord.ADJUST.word(), VerdictWord.CLEAN.word());

  private static final Comparator<AuthoredRule> BY_VERDICT =
      Comparator.comparingInt(rule -> WORST_FIRST.indexOf(word(rule)));

  @Override
  public void check(RuleBase base, Findings findings) {
    base.rules()
        .filter(rule -> !rule.patterns().isEmpty())
        .filter(rule -> WORST_FIRST.contains(word(rule)))
        .collect(Collectors.groupingBy(RuleForm::of, LinkedHashMap::new, Collectors.toList()))
        .values()
        .forEach(rules -> check(rules, findings));
  }

  private static void check(List<AuthoredRule> sameConditions, Findings findings) {
    AuthoredRule worst = sameConditions.stream().min(BY_VERDICT).orElseThrow();
    sameConditions.stream()
        .filter(rule -> BY_VERDICT.compare(rule, worst) > 0)
        .forEach(rule -> add(rule, worst, findings));
  }

  private static String word(AuthoredRule rule) {
    return new VerdictCall(rule.block().action()).verdict().map(VerdictWord::word).orElse("");
  }

  private static void add(AuthoredRule rule, AuthoredRule worst, Findings findings) {
    Spot there = worst.spot(worst.block().nameOffset());
    findings.add(
        LintKind.CONFLICT,
        rule,
        rule.block().nameOffset(),
        "%s in %s line %d says %s on the same conditions; the worst verdict wins, and this %s never counts"
            .formatted(worst.id(), there.file(), there.line(), word(worst), word(rule)),
        "tell the two apart by their conditions, or take one of them out");
  }
}
