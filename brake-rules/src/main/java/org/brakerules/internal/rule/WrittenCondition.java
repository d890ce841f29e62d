package org.brakerules.internal.rule;

import java.util.List;
import java.util.stream.Collectors;

/** One condition in the brackets of a pattern. */
public sealed interface WrittenCondition {

  /**
   * A variable for a property.
   *
   * @param variable the variable
   * @param property the property
   */
  record Named(String variable, String property) implements WrittenCondition {
    @Override
    public String toString() {
      return variable + " : " + property;
    }
  }

  /**
   * Comparisons of which one at least must hold.
   *
   * @param comparisons the comparisons
   */
  record AnyOf(List<WrittenComparison> comparisons) implements WrittenCondition {

    /** Keeps its own copy. */
    public AnyOf {
      comparisons = List.copyOf(comparisons);
    }

    @Override
    public String toString() {
      return comparisons.stream().map(Object::toString).collect(Collectors.joining(" || "));
    }
  }
}
