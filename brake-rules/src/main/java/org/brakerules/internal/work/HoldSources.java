package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.Tables;

/** Which findings may be the source that a hold waits for. */
final class HoldSources {

  private static final String TABLE = "/org/brakerules/work/hold-sources.csv";

  private final Map<String, List<String>> found = new LinkedHashMap<>();

  private HoldSources(List<Row> rows, Tables tables) {
    for (Row row : rows) {
      LimitTable.source(row, row.required("source"), tables.sources());
      found
          .computeIfAbsent(row.required("hold"), hold -> new ArrayList<>())
          .add(row.required("found"));
    }
  }

  /**
   * Reads the table that travels in this artifact.
   *
   * @throws RuleBaseException if it has a mistake
   */
  static HoldSources load(Tables tables) {
    return new HoldSources(CsvTable.ofResource(TABLE), tables);
  }

  /** The rules whose finding may be the source that a rule holds for. */
  List<String> of(String hold) {
    return List.copyOf(found.getOrDefault(hold, List.of()));
  }
}
