package org.brakerules.internal.engine;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.drools.model.Binding;
import org.drools.model.Rule;
import org.drools.model.SingleConstraint;
import org.drools.model.Variable;
import org.jspecify.annotations.Nullable;

/**
 * Which conditions of a rule held for the facts that came nearest to it, and which did not.
 *
 * @param patterns the patterns of the rule up to the first that no fact met
 */
public record WhyNot(List<Met> patterns) {

  /**
   * One pattern and the facts that came nearest.
   *
   * @param factType the type of fact it wants
   * @param negated whether the rule asks that no fact match it
   * @param literals the texts it compares with, such as the id of a limit
   * @param nearest the facts for which most conditions held; empty if there is none of the type
   */
  public record Met(
      Class<?> factType, boolean negated, List<String> literals, List<Candidate> nearest) {

    boolean matched() {
      return nearest.stream().anyMatch(Candidate::matched);
    }

    /** Whether this pattern keeps the rule from firing. */
    public boolean failed() {
      return negated == matched();
    }

    private long rank() {
      return nearest.isEmpty() ? -1 : nearest.get(0).held();
    }

    private Met and(Met other) {
      return new Met(
          factType,
          negated,
          literals,
          Stream.concat(nearest.stream(), other.nearest.stream()).toList());
    }
  }

  /**
   * A fact tried against a pattern.
   *
   * @param fact the fact
   * @param conditions the conditions with whether they held
   */
  public record Candidate(Object fact, List<Tried> conditions) {

    boolean matched() {
      return conditions.stream().allMatch(Tried::held);
    }

    private long held() {
      return conditions.stream().filter(Tried::held).count();
    }

    /** The conditions that did not hold. */
    public List<Tried> failed() {
      return conditions.stream().filter(tried -> !tried.held()).toList();
    }
  }

  /**
   * One condition.
   *
   * @param text the condition as the rule file writes it
   * @param properties the properties it looks at
   * @param held whether it held
   */
  public record Tried(String text, List<String> properties, boolean held) {}

  /** Keeps its own copy of the patterns. */
  public WhyNot {
    patterns = List.copyOf(patterns);
  }

  /** The patterns that keep the rule from firing; empty if it fires. */
  public List<Met> failed() {
    return patterns.stream().filter(Met::failed).toList();
  }

  /**
   * Tries the conditions of a rule.
   *
   * @param speaksOf which facts the verdict of the rule may be of
   */
  static WhyNot of(Rule rule, Collection<?> facts, Predicate<Object> speaksOf) {
    return new WhyNot(nearest(Conditions.of(rule), facts, speaksOf, Map.of()));
  }

  /** Depth first: the longest run of patterns that are met, then the most conditions that held. */
  private static List<Met> nearest(
      List<Conditions.Step> steps,
      Collection<?> facts,
      Predicate<Object> speaksOf,
      Map<Variable<?>, Object> bound) {
    if (steps.isEmpty()) {
      return List.of();
    }
    Conditions.Step step = steps.get(0);
    List<Conditions.Step> rest = steps.subList(1, steps.size());
    List<Met> best = List.of(met(step, List.of()));
    for (Object fact : facts) {
      if (step.factType().isInstance(fact) && (!step.isSubject() || speaksOf.test(fact))) {
        Map<Variable<?>, Object> further = bind(step, fact, bound);
        Met met = met(step, fact, further);
        boolean goesOn = met.matched() && !step.negated();
        List<Met> run = goesOn ? join(met, nearest(rest, facts, speaksOf, further)) : List.of(met);
        best = better(run, best);
      }
    }
    boolean noneMatches = step.negated() && !best.get(0).matched();
    return noneMatches ? join(best.get(0), nearest(rest, facts, speaksOf, bound)) : best;
  }

  private static List<Met> join(Met first, List<Met> rest) {
    return Stream.concat(Stream.of(first), rest.stream()).toList();
  }

  /** The run that came further; of two that fail at the same place as nearly, both together. */
  private static List<Met> better(List<Met> one, List<Met> other) {
    if (one.size() != other.size()) {
      return one.size() > other.size() ? one : other;
    }
    for (int i = 0; i < one.size(); i++) {
      int order = Long.compare(one.get(i).rank(), other.get(i).rank());
      if (order != 0) {
        return order > 0 ? one : other;
      }
    }
    int last = one.size() - 1;
    return one.get(last).failed() && last == 0 ? List.of(other.get(0).and(one.get(0))) : other;
  }

  private static Map<Variable<?>, Object> bind(
      Conditions.Step step, Object fact, Map<Variable<?>, Object> bound) {
    Map<Variable<?>, Object> further = new HashMap<>(bound);
    further.put(step.compiled().getPatternVariable(), fact);
    for (Binding binding : step.compiled().getBindings()) {
      Object value = binding.eval(inputs(binding.getInputVariables(), further));
      further.put(binding.getBoundVariable(), value);
    }
    return further;
  }

  private static Met met(Conditions.Step step, Object fact, Map<Variable<?>, Object> bound) {
    List<Tried> tried =
        step.constraints().stream().map(constraint -> tried(constraint, bound)).toList();
    return met(step, List.of(new Candidate(fact, tried)));
  }

  private static Met met(Conditions.Step step, List<Candidate> candidates) {
    List<String> literals =
        step.constraints().stream().flatMap(one -> Conditions.literals(one).stream()).toList();
    return new Met(step.factType(), step.negated(), literals, candidates);
  }

  private static Tried tried(SingleConstraint constraint, Map<Variable<?>, Object> bound) {
    return new Tried(
        Conditions.text(constraint), Conditions.properties(constraint), holds(constraint, bound));
  }

  private static boolean holds(SingleConstraint constraint, Map<Variable<?>, Object> bound) {
    try {
      return constraint.getPredicate().test(inputs(constraint.getVariables(), bound));
    } catch (Exception e) {
      throw new IllegalStateException("Cannot try " + Conditions.text(constraint), e);
    }
  }

  private static @Nullable Object[] inputs(
      Variable<?>[] variables, Map<Variable<?>, Object> bound) {
    @Nullable Object[] values = new Object[variables.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = bound.get(variables[i]);
    }
    return values;
  }
}
