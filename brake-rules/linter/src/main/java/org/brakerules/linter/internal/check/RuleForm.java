package org.brakerules.linter.internal.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Constraint;
import org.brakerules.linter.internal.base.Constraint.Binding;
import org.brakerules.linter.internal.base.Pattern;

/**
 * The conditions of a rule without what does not matter: the order of patterns and of what stands
 * in their brackets, and the names of variables. Rules of one form fire on the same jobs.
 */
final class RuleForm {

  /** Which property of which pattern a variable stands for. */
  private final Map<String, String> variables = new HashMap<>();

  private RuleForm(AuthoredRule rule) {
    for (Pattern pattern : rule.patterns()) {
      String plain = form(pattern);
      for (Constraint constraint : pattern.constraints()) {
        constraint.binding().ifPresent(binding -> name(binding, plain));
      }
    }
  }

  static List<String> of(AuthoredRule rule) {
    RuleForm form = new RuleForm(rule);
    return rule.patterns().stream().map(form::form).sorted().toList();
  }

  private void name(Binding binding, String pattern) {
    variables.put(binding.variable().text(), pattern + "#" + binding.property().text());
  }

  /** What the pattern asks for. Naming a variable asks for nothing. */
  private String form(Pattern pattern) {
    String head =
        (pattern.negated() ? "not " : "")
            + (SubjectCheck.isSubject(pattern) ? "$part : " : "")
            + pattern.type();
    return pattern.constraints().stream()
        .filter(constraint -> constraint.binding().isEmpty())
        .map(this::form)
        .distinct()
        .sorted()
        .collect(Collectors.joining(", ", head + "( ", " )"));
  }

  private String form(Constraint constraint) {
    return constraint.readable()
        ? constraint.comparisons().stream()
            .map(this::form)
            .distinct()
            .sorted()
            .collect(Collectors.joining(" || "))
        : constraint.text();
  }

  private String form(Comparison comparison) {
    String value =
        comparison.valueKind() == ValueKind.VARIABLE
            ? variables.getOrDefault(comparison.valueText(), "")
            : comparison.valueText();
    return comparison.property().text() + comparison.operator().text() + value;
  }
}
