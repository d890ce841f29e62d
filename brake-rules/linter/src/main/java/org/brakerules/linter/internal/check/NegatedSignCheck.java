package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.FactType;
import org.brakerules.model.part.Sign;

/** A look that was left out is neither good news nor bad. */
final class NegatedSignCheck implements RuleCheck {

  private static final String SIGN = "Sign";

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    for (Pattern pattern : rule.patterns()) {
      pattern
          .comparisons()
          .filter(comparison -> isOfSign(pattern, comparison))
          .forEach(comparison -> check(rule, pattern, comparison, base, findings));
    }
  }

  private static boolean isOfSign(Pattern pattern, Comparison comparison) {
    return comparison.isConstantOf(SIGN)
        || pattern
            .fact()
            .flatMap(fact -> fact.typeOf(comparison.property().text()))
            .filter(type -> type == Sign.class)
            .isPresent();
  }

  private static void check(
      AuthoredRule rule, Pattern pattern, Comparison comparison, RuleBase base, Findings findings) {
    String property = comparison.property().text();
    if (pattern.negated()) {
      add(
          rule,
          comparison,
          "under not, " + property + " would count as not seen although nobody may have looked",
          "use not only to say that a part or a kind of brake is not there",
          findings);
    } else if (comparison.operator().is("!=")) {
      add(
          rule,
          comparison,
          property + " != would also hold where nobody looked",
          "write " + property + " == Sign.SEEN",
          findings);
    } else if (comparison.valueKind() == ValueKind.CONSTANT) {
      checkConstant(rule, pattern, comparison, base, findings);
    }
  }

  private static void checkConstant(
      AuthoredRule rule, Pattern pattern, Comparison comparison, RuleBase base, Findings findings) {
    String property = comparison.property().text();
    if (comparison.constant().is(Sign.NOT_CHECKED.name())) {
      add(
          rule,
          comparison,
          "a rule may not rest on a look that was left out",
          "leave it out; a part is undecided until every point is looked at",
          findings);
    } else if (comparison.constant().is(Sign.NOT_SEEN.name())
        && !pattern.fact().filter(fact -> isGood(fact, property, base)).isPresent()) {
      add(
          rule,
          comparison,
          property + " is a sign of a fault, and a fault that is not seen is no finding",
          "write "
              + property
              + " == Sign.SEEN; NOT_SEEN is for points that find something good (finds = good)",
          findings);
    }
  }

  private static boolean isGood(FactType fact, String property, RuleBase base) {
    return base.isGoodSign(fact, property);
  }

  private static void add(
      AuthoredRule rule, Comparison comparison, String message, String remedy, Findings findings) {
    findings.add(LintKind.NEGATED_SIGN, rule, comparison.property(), message, remedy);
  }
}
