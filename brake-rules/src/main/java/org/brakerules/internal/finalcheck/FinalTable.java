package org.brakerules.internal.finalcheck;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.reading.Station;

/** The checks of finished work. */
public final class FinalTable {

  private static final String CHECKS = "/org/brakerules/work/final-checks.csv";
  private static final Pattern ID = Pattern.compile("FINAL-[0-9]{2}0");
  private static final String VEHICLE = "vehicle";

  private final Map<String, FinalRow> byId = new LinkedHashMap<>();

  private FinalTable(List<Row> rows, Tables tables, Collection<String> steps) {
    for (Row row : rows) {
      FinalRow check = read(row, tables, steps);
      if (byId.put(check.id(), check) != null) {
        throw row.mistake("check \"" + check.id() + "\" is there twice");
      }
    }
  }

  /**
   * Reads the table that travels in this artifact.
   *
   * @param steps the ids of the steps that a plan can have
   * @throws org.brakerules.internal.table.RuleBaseException if it has a mistake
   */
  public static FinalTable load(Tables tables, Collection<String> steps) {
    return of(CsvTable.ofResource(CHECKS), tables, steps);
  }

  /**
   * Reads another table of the same kind.
   *
   * @throws org.brakerules.internal.table.RuleBaseException if it has a mistake
   */
  static FinalTable of(List<Row> rows, Tables tables, Collection<String> steps) {
    return new FinalTable(rows, tables, steps);
  }

  Collection<FinalRow> rows() {
    return byId.values();
  }

  private static FinalRow read(Row row, Tables tables, Collection<String> steps) {
    String id = row.required("id");
    if (!ID.matcher(id).matches()) {
      throw row.mistake("\"" + id + "\" is no id of a check; write FINAL and a ten: FINAL-030");
    }
    return new FinalRow(
        id,
        oneOf(row, "level", VEHICLE, "wheel-end"),
        row.list("with").stream().map(step -> among(row, step, "step", steps)).toList(),
        row.required("question"),
        row.required("how"),
        row.list("limits").stream()
            .map(limit -> among(row, limit, "limit", tables.limits().ids()))
            .toList(),
        row.optional("station")
            .map(name -> row.known(name, "station", Station::byId, Names.all(Station.class))),
        row.required("consequence"),
        row.required("remedy"),
        oneOf(row, "releases", "yes", "no"),
        row.list("source").stream()
            .map(source -> LimitTable.source(row, source, tables.sources()))
            .toList());
  }

  /** Whether the cell holds the first of two words. */
  private static boolean oneOf(Row row, String column, String yes, String no) {
    return among(row, row.required(column), column, List.of(yes, no)).equals(yes);
  }

  private static String among(Row row, String name, String what, Collection<String> known) {
    return row.known(name, what, one -> Optional.of(one).filter(known::contains), known);
  }
}
