package org.brakerules.trial.internal.change;

import java.util.List;
import org.brakerules.internal.table.Row;

/**
 * One change of one row of a table of limits, or of one row of comparisons of a rule set.
 *
 * @param limit the id of the limit
 * @param where the table and line of the row
 * @param words what was changed
 * @param rows all rows of all tables of limits as changed
 * @param comparisons all rows of comparisons of the rule sets as changed
 */
public record LimitChange(
    String limit, String where, String words, List<Row> rows, List<Row> comparisons) {

  /** Keeps its own copies. */
  public LimitChange {
    rows = List.copyOf(rows);
    comparisons = List.copyOf(comparisons);
  }
}
