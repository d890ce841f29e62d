package org.brakerules.trial.internal.coverage;

import java.util.ArrayList;
import java.util.List;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.limit.Limit;

/** Names for rows of limits, of which several may share an id. */
final class RowNames {

  private final LimitTable table;

  RowNames(LimitTable table) {
    this.table = table;
  }

  /**
   * The id of the limit, and where others share it, what the row is for. All rows that one row of
   * comparisons made have one name: that row is what is written.
   */
  String of(LimitRow row) {
    Limit limit = row.limit();
    List<String> tells = new ArrayList<>();
    if (table.rows(limit.id()).size() > 1) {
      if (!limit.appliesTo().isEmpty() && !row.byComparison()) {
        tells.add(limit.appliesTo());
      }
      limit.ruleSet().map(one -> "under " + one.id()).ifPresent(tells::add);
      if (row.byComparison()) {
        return limit.id() + " [" + String.join("; ", tells) + "]";
      }
      limit.from().map(day -> "from " + day).ifPresent(tells::add);
      limit.to().map(day -> "to " + day).ifPresent(tells::add);
    }
    return tells.isEmpty() ? limit.id() : limit.id() + " [" + String.join("; ", tells) + "]";
  }
}
