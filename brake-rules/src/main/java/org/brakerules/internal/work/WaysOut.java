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

/** What is done first at a wheel end that a rule holds, so that the hold can end. */
final class WaysOut {

  private static final String TABLE = "/org/brakerules/work/ways-out.csv";

  private final Map<String, List<String>> ways = new LinkedHashMap<>();

  private WaysOut(List<Row> rows, Tables tables) {
    for (Row row : rows) {
      LimitTable.source(row, row.required("source"), tables.sources());
      ways.computeIfAbsent(row.required("hold"), hold -> new ArrayList<>())
          .add(row.required("way"));
    }
  }

  /**
   * Reads the table that travels in this artifact.
   *
   * @throws RuleBaseException if it has a mistake
   */
  static WaysOut load(Tables tables) {
    return new WaysOut(CsvTable.ofResource(TABLE), tables);
  }

  /** What to do about the hold of a rule, in a sentence or more each. */
  List<String> of(String hold) {
    return List.copyOf(ways.getOrDefault(hold, List.of()));
  }
}
