package org.brakerules.linter.internal.table;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.linter.internal.language.Attribute;

/**
 * The values of one attribute that a row is for.
 *
 * @param values the values
 * @param allBut whether the row is for all values but these
 */
record Choice(Set<Object> values, boolean allBut) {

  static Choice of(Attribute attribute, Term term) {
    Set<Object> written =
        term.values().stream()
            .flatMap(value -> attribute.value(value).stream())
            .collect(Collectors.toUnmodifiableSet());
    if (!attribute.hasWords()) {
      return new Choice(written, term.negated());
    }
    List<String> possible = attribute.possible();
    return new Choice(
        only(possible.stream(), value -> written.contains(value) != term.negated()), false);
  }

  Choice and(Choice other) {
    if (allBut && other.allBut) {
      return new Choice(
          Stream.concat(values.stream(), other.values.stream())
              .collect(Collectors.toUnmodifiableSet()),
          true);
    }
    Choice listed = allBut ? other : this;
    Choice second = allBut ? this : other;
    return new Choice(
        only(listed.values.stream(), value -> second.values.contains(value) != second.allBut),
        false);
  }

  boolean isEmpty() {
    return !allBut && values.isEmpty();
  }

  private static Set<Object> only(Stream<?> values, Predicate<Object> wanted) {
    return values.filter(wanted).collect(Collectors.toUnmodifiableSet());
  }
}
