package org.brakerules.linter.internal.check;

import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.FactType;
import org.brakerules.linter.internal.language.VerdictWord;
import org.brakerules.linter.internal.language.Vocabulary;
import org.brakerules.model.part.PartKind;

/** What rests on a replacement needs a rule that replaces such a part. */
final class NeverReplacedCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    if (!Reads.areWhole(base)) {
      return; // first the rules must be readable
    }
    Set<String> replaced =
        base.rules()
            .filter(NeverReplacedCheck::replaces)
            .flatMap(rule -> rule.patterns().stream())
            .filter(SubjectCheck::isSubject)
            .flatMap(pattern -> pattern.fact().flatMap(FactType::kind).stream())
            .map(PartKind::name)
            .collect(Collectors.toUnmodifiableSet());
    base.rules().forEach(rule -> check(rule, replaced, findings));
  }

  private static boolean replaces(AuthoredRule rule) {
    return new VerdictCall(rule.block().action())
        .verdict()
        .filter(VerdictWord.REPLACE::equals)
        .isPresent();
  }

  private static void check(AuthoredRule rule, Set<String> replaced, Findings findings) {
    rule.patterns().stream()
        .filter(pattern -> pattern.type().equals(Vocabulary.REPLACED))
        .flatMap(pattern -> pattern.comparisons())
        .filter(comparison -> comparison.isConstantOf(PartKind.class.getSimpleName()))
        .filter(comparison -> comparison.operator().is("=="))
        .filter(comparison -> !replaced.contains(comparison.constant().text()))
        .forEach(comparison -> add(rule, comparison, findings));
  }

  private static void add(AuthoredRule rule, Comparison comparison, Findings findings) {
    findings.add(
        LintKind.NEVER_REPLACED,
        rule,
        comparison.value().get(0),
        "no rule replaces a " + comparison.valueText() + ", so this rule never fires",
        "write the rule that replaces it first, or name a part that is replaced");
  }
}
