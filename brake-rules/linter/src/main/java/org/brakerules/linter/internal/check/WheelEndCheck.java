package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.Optional;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Constraint;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.Vocabulary;

/** All patterns of a rule speak of one wheel end, or of the two ends of one axle. */
final class WheelEndCheck implements RuleCheck {

  /** The variables that join patterns, by the property they are named after. */
  private static final List<String> JOINS = List.of(Vocabulary.WHEEL_END, Vocabulary.PARTNER);

  private static final String JOINED = Vocabulary.WHEEL_END + " == $" + Vocabulary.WHEEL_END;

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    List<Pattern> patterns = rule.patterns();
    if (patterns.size() < 2) {
      return;
    }
    Optional<Pattern> naming = patterns.stream().filter(WheelEndCheck::namesWheelEnd).findFirst();
    if (naming.isEmpty()) {
      add(
          rule,
          patterns.get(0),
          "the patterns are not joined by their wheel end",
          "write $wheelEnd : wheelEnd in the first pattern and "
              + JOINED
              + " in each of the others",
          findings);
      return;
    }
    for (Pattern pattern : patterns) {
      if (!pattern.equals(naming.get()) && !joins(pattern, naming.get())) {
        add(
            rule,
            pattern,
            pattern.type() + " may be of another wheel end",
            "write " + JOINED + " in its brackets",
            findings);
      }
    }
  }

  private static boolean namesWheelEnd(Pattern pattern) {
    return JOINS.stream().anyMatch(property -> names(pattern, property));
  }

  private static boolean names(Pattern pattern, String property) {
    return !pattern.negated()
        && pattern.constraints().stream()
            .flatMap(constraint -> constraint.binding().stream())
            .anyMatch(
                binding ->
                    binding.variable().is("$" + property) && binding.property().is(property));
  }

  private static boolean joins(Pattern pattern, Pattern naming) {
    return pattern.constraints().stream()
        .map(Constraint::comparisons)
        .anyMatch(comparisons -> comparisons.size() == 1 && joins(comparisons.get(0), naming));
  }

  /** The variable must be one that the first pattern names. */
  private static boolean joins(Comparison comparison, Pattern naming) {
    return comparison.property().is(Vocabulary.WHEEL_END)
        && comparison.operator().is("==")
        && comparison.valueKind() == ValueKind.VARIABLE
        && JOINS.stream()
            .filter(property -> names(naming, property))
            .anyMatch(property -> comparison.value().get(0).is("$" + property));
  }

  private static void add(
      AuthoredRule rule, Pattern pattern, String message, String remedy, Findings findings) {
    findings.add(LintKind.NOT_JOINED, rule, pattern.typeOffset(), message, remedy);
  }
}
