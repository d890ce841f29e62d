package org.brakerules.internal.engine;

import java.util.ArrayList;
import java.util.List;
import org.drools.model.Condition;
import org.drools.model.Constraint;
import org.drools.model.Pattern;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;
import org.drools.model.index.AlphaIndexImpl;

/** The conditions of one compiled rule, pattern by pattern. */
final class Conditions {

  /**
   * One pattern of a rule.
   *
   * @param compiled the pattern as the engine has it
   * @param negated whether the rule asks that no fact match it
   */
  record Step(Pattern<?> compiled, boolean negated) {

    Class<?> factType() {
      return compiled.getPatternVariable().getType();
    }

    /** Whether the verdict of the rule is of the part this pattern finds. */
    boolean isSubject() {
      return compiled.getPatternVariable().getName().equals("$part");
    }

    List<SingleConstraint> constraints() {
      List<SingleConstraint> found = new ArrayList<>();
      collect(compiled.getConstraint(), found);
      return found;
    }

    private static void collect(Constraint constraint, List<SingleConstraint> found) {
      if (constraint instanceof SingleConstraint single) {
        if (single != SingleConstraint.TRUE) {
          found.add(single);
        }
      } else if (constraint.getType() == Constraint.Type.OR) {
        throw new IllegalStateException("The rule language has no alternatives in a pattern.");
      } else {
        constraint.getChildren().forEach(child -> collect(child, found));
      }
    }
  }

  private static final java.util.regex.Pattern COMPARED =
      java.util.regex.Pattern.compile("(?<![.$\\w])([a-z]\\w*)\\s*[!=]=");

  private Conditions() {}

  static List<Step> of(Rule rule) {
    List<Step> steps = new ArrayList<>();
    collect(rule.getView(), false, steps);
    return steps;
  }

  /** The constraint as the rule file writes it. */
  static String text(SingleConstraint constraint) {
    return constraint.predicateInformation().getStringConstraint();
  }

  /** The properties a constraint looks at; the compiled form keeps them in its text only. */
  static List<String> properties(SingleConstraint constraint) {
    return COMPARED.matcher(text(constraint)).results().map(found -> found.group(1)).toList();
  }

  /** The text a constraint compares its property with, if it is one. */
  static List<String> literals(SingleConstraint constraint) {
    return constraint.getIndex() instanceof AlphaIndexImpl<?, ?> index
            && index.getRightValue() instanceof String text
        ? List.of(text)
        : List.of();
  }

  private static void collect(Condition condition, boolean negated, List<Step> steps) {
    if (condition instanceof Pattern<?> pattern) {
      steps.add(new Step(pattern, negated));
      return;
    }
    switch (condition.getType()) {
      case AND -> condition.getSubConditions().forEach(one -> collect(one, negated, steps));
      case NOT -> condition.getSubConditions().forEach(one -> collect(one, true, steps));
      case CONSEQUENCE -> {}
      default ->
          throw new IllegalStateException(
              "The rule language has no " + condition.getType() + " between patterns.");
    }
  }
}
