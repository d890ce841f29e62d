package org.brakerules.trial.internal.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.brakerules.internal.engine.FactReader;
import org.brakerules.internal.fact.Brake;
import org.brakerules.internal.rule.WrittenComparison;
import org.brakerules.internal.rule.WrittenCondition;
import org.brakerules.internal.rule.WrittenCondition.AnyOf;
import org.brakerules.internal.rule.WrittenCondition.Named;
import org.brakerules.internal.rule.WrittenPattern;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.rule.WrittenValue;
import org.brakerules.model.part.Part;

/**
 * A rule made ready to be tried on facts. Its conditions are numbered in the order written: each
 * comparison is one, and each pattern under {@code not}.
 */
final class TriedRule {

  /** One pattern; under {@code not} its number is that of its only condition. */
  record Step(
      Class<?> type, boolean negated, int number, List<Variable> variables, List<Test> tests) {

    /**
     * Whether it looks for something that is noted only where it is so, such as a replaced part.
     */
    boolean isMarker() {
      return !Part.class.isAssignableFrom(type) && type != Brake.class;
    }
  }

  /** A variable for a property. */
  record Variable(String name, Function<Object, Object> reader) {}

  /** Comparisons of which one at least must hold; the number is that of the first. */
  record Test(int number, List<Comparison> anyOf) {

    /** Whether it compares with no variable. */
    boolean hasOwnValues() {
      return anyOf.stream().allMatch(one -> one.fixed().isPresent());
    }
  }

  /** One comparison, with a value of its own or with that of a variable. */
  record Comparison(
      Function<Object, Object> reader, boolean equal, Optional<Object> fixed, String variable) {}

  private final List<Step> steps = new ArrayList<>();
  private final List<String> conditions = new ArrayList<>();

  TriedRule(WrittenRule rule) {
    rule.patterns().forEach(pattern -> steps.add(step(pattern)));
  }

  List<Step> steps() {
    return steps;
  }

  /** The conditions as the rule file writes them, by their numbers. */
  List<String> conditions() {
    return conditions;
  }

  private Step step(WrittenPattern pattern) {
    int number = conditions.size();
    List<Variable> variables = new ArrayList<>();
    List<Test> tests = new ArrayList<>();
    if (pattern.negated()) {
      conditions.add(pattern.toString());
    }
    for (WrittenCondition condition : pattern.conditions()) {
      if (condition instanceof Named named) {
        variables.add(
            new Variable(named.variable(), FactReader.reader(pattern.type(), named.property())));
      } else {
        tests.add(test(pattern, (AnyOf) condition));
      }
    }
    return new Step(pattern.type(), pattern.negated(), number, variables, tests);
  }

  private Test test(WrittenPattern pattern, AnyOf anyOf) {
    int number = conditions.size();
    if (!pattern.negated()) {
      anyOf.comparisons().stream()
          .map(one -> pattern.type().getSimpleName() + "( " + one + " )")
          .forEach(conditions::add);
    }
    return new Test(
        number, anyOf.comparisons().stream().map(one -> comparison(pattern, one)).toList());
  }

  private static Comparison comparison(WrittenPattern pattern, WrittenComparison written) {
    WrittenValue value = written.value();
    Optional<Object> fixed =
        value instanceof WrittenValue.Constant constant
            ? Optional.of(constant.constant())
            : value instanceof WrittenValue.Text text ? Optional.of(text.text()) : Optional.empty();
    String variable = value instanceof WrittenValue.Variable named ? named.name() : "";
    return new Comparison(
        FactReader.reader(pattern.type(), written.property()), written.equal(), fixed, variable);
  }
}
