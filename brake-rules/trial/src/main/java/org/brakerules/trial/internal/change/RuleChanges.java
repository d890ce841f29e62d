package org.brakerules.trial.internal.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.internal.rule.WrittenAction;
import org.brakerules.internal.rule.WrittenAction.Call;
import org.brakerules.internal.rule.WrittenComparison;
import org.brakerules.internal.rule.WrittenCondition;
import org.brakerules.internal.rule.WrittenCondition.AnyOf;
import org.brakerules.internal.rule.WrittenCondition.Named;
import org.brakerules.internal.rule.WrittenPattern;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.rule.WrittenValue;

/** Every small change of one rule that somebody could make by mistake. */
public final class RuleChanges {

  /** Of a longer list only the neighbours are tried: a slip of the pen takes the next line. */
  private static final int SHORT_LIST = 4;

  private final WrittenRule rule;
  private final Names names;
  private final List<Change> changes = new ArrayList<>();

  private RuleChanges(WrittenRule rule, Names names) {
    this.rule = rule;
    this.names = names;
  }

  /** The changes of a rule. */
  public static List<Change> of(WrittenRule rule, Names names) {
    RuleChanges changes = new RuleChanges(rule, names);
    for (int i = 0; i < rule.patterns().size(); i++) {
      changes.pattern(i);
    }
    changes.action();
    return List.copyOf(changes.changes);
  }

  private void pattern(int place) {
    WrittenPattern pattern = rule.patterns().get(place);
    if (!pattern.variable().equals(Optional.of(rule.action().variable()))) {
      add(pattern + " left out", withoutPattern(place));
    }
    if (pattern.negated()) {
      add(pattern + " asked for", rule.with(place, pattern.turned()));
    }
    for (int i = 0; i < pattern.conditions().size(); i++) {
      if (pattern.conditions().get(i) instanceof AnyOf anyOf) {
        condition(place, i, anyOf);
      }
    }
  }

  /** What was joined to a pattern that is gone is joined to nothing. */
  private WrittenRule withoutPattern(int place) {
    Set<String> gone =
        rule.patterns().get(place).conditions().stream()
            .filter(Named.class::isInstance)
            .map(condition -> ((Named) condition).variable())
            .collect(Collectors.toSet());
    WrittenRule less = rule.without(place);
    for (int i = 0; i < less.patterns().size(); i++) {
      WrittenPattern pattern = less.patterns().get(i);
      List<WrittenCondition> kept =
          pattern.conditions().stream().filter(condition -> !names(condition, gone)).toList();
      less =
          less.with(
              i, new WrittenPattern(pattern.type(), pattern.variable(), pattern.negated(), kept));
    }
    return less;
  }

  private static boolean names(WrittenCondition condition, Set<String> variables) {
    return condition instanceof AnyOf anyOf
        && anyOf.comparisons().stream()
            .map(WrittenComparison::value)
            .anyMatch(
                value ->
                    value instanceof WrittenValue.Variable variable
                        && variables.contains(variable.name()));
  }

  private void condition(int place, int at, AnyOf anyOf) {
    WrittenPattern pattern = rule.patterns().get(place);
    String in = " in " + pattern.type().getSimpleName();
    add(anyOf + in + " left out", rule.with(place, pattern.without(at)));
    for (int i = 0; i < anyOf.comparisons().size(); i++) {
      WrittenComparison comparison = anyOf.comparisons().get(i);
      if (anyOf.comparisons().size() > 1) {
        List<WrittenComparison> fewer = new ArrayList<>(anyOf.comparisons());
        fewer.remove(i);
        add(comparison + in + " left out", with(place, at, fewer));
      }
      for (WrittenComparison other : others(comparison)) {
        List<WrittenComparison> changed = new ArrayList<>(anyOf.comparisons());
        changed.set(i, other);
        add(comparison + in + " became " + other, with(place, at, changed));
      }
    }
  }

  private WrittenRule with(int place, int at, List<WrittenComparison> comparisons) {
    return rule.with(place, rule.patterns().get(place).with(at, new AnyOf(comparisons)));
  }

  private List<WrittenComparison> others(WrittenComparison comparison) {
    return Stream.concat(Stream.of(comparison.turned()), withOtherValues(comparison)).toList();
  }

  private Stream<WrittenComparison> withOtherValues(WrittenComparison comparison) {
    WrittenValue value = comparison.value();
    if (value instanceof WrittenValue.Constant constant) {
      return neighbours(constant.constant()).map(WrittenValue.Constant::new).map(comparison::with);
    }
    if (value instanceof WrittenValue.Text text) {
      return names.otherLimits(text.text()).map(WrittenValue.Text::new).map(comparison::with);
    }
    return comparison.property().equals("wheelEnd")
        ? Stream.of(new WrittenComparison("partner", comparison.equal(), value))
        : Stream.empty();
  }

  private static Stream<Enum<?>> neighbours(Enum<?> constant) {
    List<Enum<?>> all = List.of(constant.getDeclaringClass().getEnumConstants());
    if (all.size() <= SHORT_LIST) {
      return all.stream().filter(one -> !one.equals(constant));
    }
    int place = all.indexOf(constant);
    return Stream.of(
        all.get((place + 1) % all.size()), all.get((place + all.size() - 1) % all.size()));
  }

  private void action() {
    WrittenAction action = rule.action();
    for (Call call : Call.values()) {
      boolean asks = call == Call.LOOK_AT || call == Call.MEASURE_AGAIN;
      if (call != action.call() && (!asks || action.point().isPresent())) {
        Optional<String> point = asks ? action.point() : Optional.empty();
        WrittenAction other = new WrittenAction(call, action.variable(), point);
        add(action + " became " + other, rule.with(other));
      }
    }
    action.point().stream()
        .flatMap(names::otherPoints)
        .map(point -> new WrittenAction(action.call(), action.variable(), Optional.of(point)))
        .forEach(other -> add(action + " became " + other, rule.with(other)));
  }

  private void add(String words, WrittenRule changed) {
    changes.add(new Change(words, changed));
  }
}
