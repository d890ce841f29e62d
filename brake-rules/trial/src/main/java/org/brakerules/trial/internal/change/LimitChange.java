package org.brakerules.trial.internal.change;

import java.util.List;
import org.brakerules.internal.table.Row;

/**
 * One change of one row of a table of limits.
 *
 * @param limit the id of the limit
 * @param where the table and line of the row
 * @param words what was changed
 * @param rows all rows of all tables as changed
 */
public record LimitChange(String limit, String where, String words, List<Row> rows) {

  /** Keeps its own copy. */
  public LimitChange {
    rows = List.copyOf(rows);
  }
}
