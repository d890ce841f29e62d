package org.brakerules.linter.internal.base;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A table of the rule base.
 *
 * @param file the file, relative to the resources
 * @param rows its rows
 * @param mistakes what is wrong with its form
 */
public record Table(String file, List<Row> rows, List<Mistake> mistakes) {

  /** Keeps its own copies. */
  public Table {
    rows = List.copyOf(rows);
    mistakes = List.copyOf(mistakes);
  }

  /** Its rows, if they can be relied on: where its form is wrong, cells may have slipped. */
  public List<Row> soundRows() {
    return mistakes.isEmpty() ? rows : List.of();
  }

  /** Everything that stands in a column. */
  public Set<String> column(String name) {
    return rows.stream().map(row -> row.text(name)).collect(Collectors.toUnmodifiableSet());
  }
}
