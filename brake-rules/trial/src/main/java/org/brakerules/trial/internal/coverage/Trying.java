package org.brakerules.trial.internal.coverage;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.trial.internal.coverage.TriedRule.Comparison;
import org.brakerules.trial.internal.coverage.TriedRule.Step;
import org.brakerules.trial.internal.coverage.TriedRule.Test;
import org.brakerules.trial.internal.coverage.TriedRule.Variable;

/**
 * Tries a rule on every choice of facts of a case, letting one condition fail at most. What is
 * noted only where it is so, such as a part that is replaced, may be missing: then what it would be
 * is the condition that fails, wherever it would be.
 */
final class Trying {

  private static final int NONE = -1;

  /**
   * A choice of facts for the first patterns.
   *
   * @param next the place of the next pattern
   * @param known what the variables stand for
   * @param failing the one condition that fails; none so far if negative
   * @param deciding the conditions that hold, and that nothing stands in for
   */
  private record Choice(int next, Map<String, Object> known, int failing, BitSet deciding) {

    boolean mayFail() {
      return failing == NONE;
    }

    /** The same choice without a fact for the next pattern, whose condition therefore fails. */
    Choice lacking(int condition) {
      return new Choice(next + 1, known, condition, deciding);
    }
  }

  private final TriedRule rule;
  private final BenchedCase on;
  private final BitSet holds = new BitSet();
  private final BitSet fails = new BitSet();
  private boolean matched;

  private Trying(TriedRule rule, BenchedCase on) {
    this.rule = rule;
    this.on = on;
  }

  static Trying of(TriedRule rule, BenchedCase on) {
    Trying trying = new Trying(rule, on);
    trying.goOn(new Choice(0, Map.of(), NONE, new BitSet()));
    return trying;
  }

  /** Whether all conditions hold for some choice of facts. */
  boolean matched() {
    return matched;
  }

  /** Whether all conditions but one hold for some choice of facts. */
  boolean near() {
    return !fails.isEmpty();
  }

  /** Whether a condition holds while the rest holds, and without it the rule would not. */
  boolean holds(int condition) {
    return holds.get(condition);
  }

  /** Whether a condition fails while the rest holds. */
  boolean fails(int condition) {
    return fails.get(condition);
  }

  /** Whether a condition with a value of its own holds for some fact, whatever else holds there. */
  boolean holdsForAnother(int condition) {
    return rule.steps().stream()
        .filter(step -> !step.negated())
        .anyMatch(
            step ->
                step.tests().stream()
                    .filter(test -> test.number() == condition && test.hasOwnValues())
                    .anyMatch(test -> holdsForAny(step, test)));
  }

  private boolean holdsForAny(Step step, Test test) {
    return on.facts(step.type()).stream()
        .anyMatch(fact -> holding(test, fact, new HashMap<>(), new BitSet()) > 0);
  }

  private void goOn(Choice choice) {
    if (choice.next() == rule.steps().size()) {
      noteDown(choice);
      return;
    }
    Step step = rule.steps().get(choice.next());
    if (step.negated()) {
      goOnWithout(step, choice);
      return;
    }
    on.facts(step.type()).forEach(fact -> goOnWith(step, fact, choice));
    if (choice.mayFail() && isMissing(step)) {
      goOn(choice.lacking(step.tests().get(0).number()));
    }
  }

  private void noteDown(Choice choice) {
    if (choice.mayFail()) {
      matched = true;
      holds.or(choice.deciding());
    } else {
      fails.set(choice.failing());
    }
  }

  private void goOnWith(Step step, Object fact, Choice choice) {
    Map<String, Object> known = bound(step, fact, choice.known());
    BitSet deciding = (BitSet) choice.deciding().clone();
    int failing = choice.failing();
    for (Test test : step.tests()) {
      if (holding(test, fact, known, deciding) == 0) {
        if (failing != NONE) {
          return;
        }
        failing = test.number();
      }
    }
    goOn(new Choice(choice.next() + 1, known, failing, deciding));
  }

  private void goOnWithout(Step step, Choice choice) {
    boolean found =
        on.facts(step.type()).stream()
            .anyMatch(fact -> matches(step, fact, bound(step, fact, choice.known())));
    if (!found) {
      BitSet deciding = (BitSet) choice.deciding().clone();
      deciding.set(step.number());
      goOn(new Choice(choice.next() + 1, choice.known(), choice.failing(), deciding));
    } else if (choice.mayFail()) {
      goOn(choice.lacking(step.number()));
    }
  }

  private static boolean matches(Step step, Object fact, Map<String, Object> known) {
    return step.tests().stream().allMatch(test -> holding(test, fact, known, new BitSet()) > 0);
  }

  private boolean isMissing(Step step) {
    List<Test> tests = step.tests();
    return step.isMarker()
        && !tests.isEmpty()
        && on.facts(step.type()).stream()
            .allMatch(fact -> holding(tests.get(0), fact, new HashMap<>(), new BitSet()) == 0);
  }

  private static Map<String, Object> bound(Step step, Object fact, Map<String, Object> known) {
    Map<String, Object> further = new HashMap<>(known);
    for (Variable variable : step.variables()) {
      further.put(variable.name(), variable.reader().apply(fact));
    }
    return further;
  }

  /** How many comparisons hold; one that holds alone decides. */
  private static int holding(Test test, Object fact, Map<String, Object> known, BitSet deciding) {
    int holding = 0;
    int last = 0;
    for (int i = 0; i < test.anyOf().size(); i++) {
      if (holds(test.anyOf().get(i), fact, known)) {
        holding++;
        last = i;
      }
    }
    if (holding == 1) {
      deciding.set(test.number() + last);
    }
    return holding;
  }

  /** What is missing was nowhere, so its variables stand for whatever is first compared with. */
  private static boolean holds(Comparison one, Object fact, Map<String, Object> known) {
    Object value = one.reader().apply(fact);
    Object wanted =
        one.fixed().orElseGet(() -> known.computeIfAbsent(one.variable(), name -> value));
    return value.equals(wanted) == one.equal();
  }
}
