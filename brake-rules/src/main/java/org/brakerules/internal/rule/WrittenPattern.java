package org.brakerules.internal.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One pattern of a rule.
 *
 * @param type the class of the facts it looks for
 * @param variable the variable that names the fact; empty if none
 * @param negated whether it stands under {@code not}
 * @param conditions what stands in its brackets
 */
public record WrittenPattern(
    Class<?> type, Optional<String> variable, boolean negated, List<WrittenCondition> conditions) {

  /** Keeps its own copy. */
  public WrittenPattern {
    conditions = List.copyOf(conditions);
  }

  /** The same pattern, asking for the contrary. */
  public WrittenPattern turned() {
    return new WrittenPattern(type, variable, !negated, conditions);
  }

  /** The same pattern without one of its conditions. */
  public WrittenPattern without(int place) {
    List<WrittenCondition> changed = new ArrayList<>(conditions);
    changed.remove(place);
    return new WrittenPattern(type, variable, negated, changed);
  }

  /** The same pattern with another condition in the place of one. */
  public WrittenPattern with(int place, WrittenCondition other) {
    List<WrittenCondition> changed = new ArrayList<>(conditions);
    changed.set(place, other);
    return new WrittenPattern(type, variable, negated, changed);
  }

  @Override
  public String toString() {
    String in = conditions.stream().map(Object::toString).collect(Collectors.joining(", "));
    return (negated ? "not " : "") + type.getSimpleName() + "( " + in + " )";
  }
}
