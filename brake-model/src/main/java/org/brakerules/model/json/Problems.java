package org.brakerules.model.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Collects what is wrong with one document. */
final class Problems {

  /** Nobody reads further, and a hostile document must not fill the memory. */
  private static final int MOST = 1_000;

  private final List<Problem> problems = new ArrayList<>();

  /**
   * Notes a problem.
   *
   * @throws InvalidJobException if there are too many
   */
  void add(Spot spot, String found, String expected) {
    problems.add(new Problem(spot.pointer(), spot.line(), spot.column(), found, expected));
    if (problems.size() >= MOST) {
      throw asException();
    }
  }

  /** Notes that a value is not what was expected. */
  void add(Node node, String expected) {
    add(node.spot(), node.shown(), expected);
  }

  int count() {
    return problems.size();
  }

  /** Builds a record, or notes at the node why the record refused. */
  <T> Optional<T> build(Node node, Supplier<T> record) {
    try {
      return Optional.of(record.get());
    } catch (IllegalArgumentException refused) {
      add(
          node.spot(),
          node.shown() + " that is refused: " + Shown.plain(String.valueOf(refused.getMessage())),
          "values that fit together");
      return Optional.empty();
    }
  }

  /** Everything noted so far, in reading order. */
  InvalidJobException asException() {
    Comparator<Problem> readingOrder =
        Comparator.comparingInt(Problem::line)
            .thenComparingInt(Problem::column)
            .thenComparing(Problem::pointer)
            .thenComparing(Problem::found);
    return new InvalidJobException(problems.stream().sorted(readingOrder).toList());
  }
}
