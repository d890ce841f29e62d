package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.Vocabulary;
import org.brakerules.model.part.Sign;
import org.brakerules.model.reading.Measurement;

/** A property is compared with what it can be; anything else compiles and never matches. */
final class ValueCheck implements RuleCheck {

  private static final Set<String> EQUALITY = Set.of("==", "!=");

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    for (Pattern pattern : rule.patterns()) {
      pattern.comparisons().forEach(one -> check(rule, pattern, one, findings));
    }
  }

  /** Whether the property can never have the value. */
  static boolean isWrong(Pattern pattern, Comparison comparison) {
    return typeOf(pattern, comparison)
        .filter(type -> type != Measurement.class && !fits(comparison, type))
        .isPresent();
  }

  private static void check(
      AuthoredRule rule, Pattern pattern, Comparison comparison, Findings findings) {
    Optional<Class<?>> type = typeOf(pattern, comparison);
    String property = comparison.property().text();
    boolean equality = EQUALITY.contains(comparison.operator().text());
    if (isWrong(pattern, comparison)) {
      findings.add(
          LintKind.WRONG_VALUE,
          rule,
          comparison.value().get(0),
          property + " is never " + comparison.valueText(),
          type.map(ValueCheck::rightValue).orElse(""));
    } else if (type.filter(one -> one == Measurement.class).isPresent() && equality) {
      findings.add(
          LintKind.MEASUREMENT,
          rule,
          comparison.property(),
          property + " is a reading, and rules do not look at readings",
          "write BeyondLimit( limit == \"id of its limit\", $wheelEnd : wheelEnd )");
    } else if (type.filter(one -> one == String.class).isPresent()
        && comparison.operator().is("!=")) {
      findings.add(
          LintKind.WRONG_VALUE,
          rule,
          comparison.operator(),
          property + " != would hold for every other " + property,
          "write == and name the one that is meant");
    }
  }

  private static Optional<Class<?>> typeOf(Pattern pattern, Comparison comparison) {
    return pattern.fact().flatMap(fact -> fact.typeOf(comparison.property().text()));
  }

  private static boolean fits(Comparison comparison, Class<?> type) {
    return switch (comparison.valueKind()) {
      case VARIABLE -> true;
      case TEXT -> type == String.class;
      case CONSTANT ->
          comparison.isConstantOf(type.getSimpleName()) || isUnknown(comparison); // told elsewhere
      default -> false;
    };
  }

  private static boolean isUnknown(Comparison comparison) {
    return comparison.valueKind() == ValueKind.CONSTANT
        && Vocabulary.constantsOf(comparison.constantType().text()).isEmpty();
  }

  private static String rightValue(Class<?> type) {
    if (type == String.class) {
      return "write a text in double quotes, such as the id of a limit";
    }
    if (type == Sign.class) {
      return "write Sign.SEEN";
    }
    List<String> constants =
        Vocabulary.constantsOf(type).stream()
            .map(constant -> type.getSimpleName() + "." + constant)
            .toList();
    return constants.isEmpty()
        ? "compare it with a variable of another pattern"
        : Remedy.known(
            "", constants, "write a " + type.getSimpleName() + ", such as " + constants.get(0));
  }
}
