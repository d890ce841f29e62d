package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.Optional;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Constraint;
import org.brakerules.linter.internal.base.Constraint.Binding;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.Vocabulary;

/** All patterns of a rule speak of one wheel end, or of the two ends of one axle. */
final class WheelEndCheck implements RuleCheck {

  private static final String WHEEL_END = Vocabulary.WHEEL_END;

  /** The variables that join patterns, by the property they are named after. */
  private static final List<String> JOINS = List.of(WHEEL_END, Vocabulary.PARTNER);

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    List<Pattern> patterns = rule.patterns();
    if (patterns.size() < 2) {
      return;
    }
    Optional<Pattern> naming =
        patterns.stream().filter(pattern -> !named(pattern).isEmpty()).findFirst();
    if (naming.isPresent()) {
      checkOthers(rule, naming.get(), named(naming.get()), findings);
    } else {
      Pattern first =
          patterns.stream().filter(one -> !one.negated()).findFirst().orElse(patterns.get(0));
      add(
          rule,
          first,
          "the patterns are not joined by their wheel end",
          toWrite("$" + WHEEL_END + " : " + WHEEL_END, first),
          findings);
      checkOthers(rule, first, List.of("$" + WHEEL_END), findings);
    }
  }

  private static void checkOthers(
      AuthoredRule rule, Pattern naming, List<String> variables, Findings findings) {
    for (Pattern pattern : rule.patterns()) {
      if (!pattern.equals(naming) && !joins(pattern, variables)) {
        add(
            rule,
            pattern,
            pattern.type() + " may be of another wheel end",
            toWrite(WHEEL_END + " == " + variables.get(0), pattern),
            findings);
      }
    }
  }

  /** The variables of a pattern that others can be joined by. */
  private static List<String> named(Pattern pattern) {
    return JOINS.stream()
        .filter(property -> !pattern.negated() && names(pattern, property))
        .map(property -> "$" + property)
        .toList();
  }

  private static boolean names(Pattern pattern, String property) {
    return pattern.constraints().stream()
        .flatMap(constraint -> constraint.binding().stream())
        .anyMatch(
            binding -> binding.variable().is("$" + property) && binding.property().is(property));
  }

  private static boolean joins(Pattern pattern, List<String> variables) {
    return pattern.constraints().stream()
        .map(Constraint::comparisons)
        .anyMatch(comparisons -> comparisons.size() == 1 && joins(comparisons.get(0), variables));
  }

  private static boolean joins(Comparison comparison, List<String> variables) {
    return comparison.property().is(WHEEL_END)
        && comparison.operator().is("==")
        && comparison.valueKind() == ValueKind.VARIABLE
        && variables.contains(comparison.valueText());
  }

  /** What the pattern says of its wheel end makes way; else the condition goes to the end. */
  private static String toWrite(String condition, Pattern pattern) {
    return pattern.constraints().stream()
        .filter(WheelEndCheck::isOfWheelEnd)
        .findFirst()
        .map(other -> "write \"%s\" in place of \"%s\"".formatted(condition, other.text()))
        .orElseGet(
            () ->
                pattern.constraints().isEmpty()
                    ? "write \"" + condition + "\" in its brackets"
                    : "write \", " + condition + "\" before its closing bracket");
  }

  private static boolean isOfWheelEnd(Constraint constraint) {
    return constraint.binding().map(Binding::property).filter(one -> one.is(WHEEL_END)).isPresent()
        || constraint.comparisons().stream().anyMatch(one -> one.property().is(WHEEL_END));
  }

  private static void add(
      AuthoredRule rule, Pattern pattern, String message, String remedy, Findings findings) {
    findings.add(LintKind.NOT_JOINED, rule, pattern.typeOffset(), message, remedy);
  }
}
