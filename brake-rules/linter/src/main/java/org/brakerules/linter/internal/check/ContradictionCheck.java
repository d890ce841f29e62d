package org.brakerules.linter.internal.check;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Constraint;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.Vocabulary;
import org.brakerules.linter.internal.text.Token;

/** All conditions in the brackets of a pattern can be true at once. */
final class ContradictionCheck implements RuleCheck {

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    rule.patterns().forEach(pattern -> check(rule, pattern, findings));
  }

  private static void check(AuthoredRule rule, Pattern pattern, Findings findings) {
    Map<String, Set<String>> left = new HashMap<>();
    for (Constraint constraint : pattern.constraints()) {
      Optional<Token> property = onlyProperty(constraint);
      if (property.isPresent()) {
        String name = property.get().text();
        Set<String> allowed = allowed(pattern, constraint);
        Set<String> still = left.computeIfAbsent(name, key -> new LinkedHashSet<>(allowed));
        still.retainAll(allowed);
        if (still.isEmpty()) {
          add(rule, pattern, property.get(), findings);
          left.remove(name);
        }
      }
    }
  }

  /** The one property that all alternatives of a condition compare with fixed values. */
  private static Optional<Token> onlyProperty(Constraint constraint) {
    boolean one =
        constraint.comparisons().stream().map(each -> each.property().text()).distinct().count()
            == 1;
    boolean fixed = constraint.comparisons().stream().allMatch(ContradictionCheck::isFixed);
    return one && fixed
        ? Optional.of(constraint.comparisons().get(0).property())
        : Optional.empty();
  }

  private static boolean isFixed(Comparison comparison) {
    return comparison.valueKind() == ValueKind.CONSTANT
        || (comparison.valueKind() == ValueKind.TEXT && comparison.operator().is("=="));
  }

  private static Set<String> allowed(Pattern pattern, Constraint constraint) {
    return constraint.comparisons().stream()
        .flatMap(comparison -> allowed(pattern, comparison).stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  private static List<String> allowed(Pattern pattern, Comparison comparison) {
    String value =
        comparison.valueKind() == ValueKind.TEXT
            ? comparison.value().get(0).value()
            : comparison.constant().text();
    if (comparison.operator().is("==")) {
      return List.of(value);
    }
    return pattern
        .fact()
        .flatMap(fact -> fact.typeOf(comparison.property().text()))
        .map(Vocabulary::constantsOf)
        .orElse(List.of())
        .stream()
        .filter(constant -> !constant.equals(value))
        .toList();
  }

  private static void add(AuthoredRule rule, Pattern pattern, Token property, Findings findings) {
    String name = property.text();
    String demands =
        pattern.constraints().stream()
            .filter(constraint -> onlyProperty(constraint).filter(one -> one.is(name)).isPresent())
            .map(Constraint::text)
            .collect(Collectors.joining(" and "));
    findings.add(
        LintKind.CONTRADICTION,
        rule,
        property,
        demands + " are never true at once, so the pattern matches nothing",
        "take one of them out, or join them by || if either will do");
  }
}
