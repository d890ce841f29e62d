package org.brakerules.trial.internal.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.brakerules.internal.table.Row;

/** Every small change of the rows of limits that somebody could make by mistake. */
public final class LimitChanges {

  private static final Map<String, List<String>> COMPARISONS =
      Map.of(
          "at most", List.of("less than", "at least"),
          "less than", List.of("at most", "more than"),
          "at least", List.of("more than", "at most"),
          "more than", List.of("at least", "less than"));

  private final List<Row> rows;
  private final List<LimitChange> changes = new ArrayList<>();

  private LimitChanges(List<Row> rows) {
    this.rows = rows;
  }

  /** The changes of all rows, row by row. */
  public static List<LimitChange> of(List<Row> rows) {
    LimitChanges changes = new LimitChanges(rows);
    for (int i = 0; i < rows.size(); i++) {
      changes.row(i);
    }
    return List.copyOf(changes.changes);
  }

  private void row(int place) {
    Row row = rows.get(place);
    remove(place);
    COMPARISONS
        .getOrDefault(row.required("comparison"), List.of())
        .forEach(other -> set(place, "comparison", other));
    NextValue.of(cell(row, "value")).forEach(other -> set(place, "value", other));
    if (!cell(row, "station").isEmpty()) {
      set(place, "station", "");
    }
    fewer(row, "methods").forEach(other -> set(place, "methods", other));
    if (!cell(row, "moment").isEmpty()) {
      set(place, "moment", "");
    }
    fewer(row, "applies-to").forEach(other -> set(place, "applies-to", other));
    if (!cell(row, "rule-set").isEmpty()) {
      set(place, "rule-set", "");
    }
    days(cell(row, "from")).forEach(other -> set(place, "from", other));
    days(cell(row, "to")).forEach(other -> set(place, "to", other));
  }

  /** A list without each of its entries in turn. */
  private static Stream<String> fewer(Row row, String column) {
    List<String> entries = List.of(cell(row, column).split(";"));
    if (cell(row, column).isEmpty()) {
      return Stream.empty();
    }
    List<String> lists = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      List<String> fewer = new ArrayList<>(entries);
      fewer.remove(i);
      lists.add(String.join(";", fewer).strip());
    }
    return lists.stream();
  }

  private static Stream<String> days(String date) {
    if (date.isEmpty()) {
      return Stream.empty();
    }
    LocalDate day = LocalDate.parse(date);
    return Stream.of(day.minusDays(1).toString(), day.plusDays(1).toString());
  }

  private void remove(int place) {
    List<Row> fewer = new ArrayList<>(rows);
    Row row = fewer.remove(place);
    add(row, "row left out", fewer);
  }

  private void set(int place, String column, String value) {
    Row row = rows.get(place);
    Map<String, String> cells = new LinkedHashMap<>(row.cells());
    String before = cell(row, column);
    cells.put(column, value);
    List<Row> changed = new ArrayList<>(rows);
    changed.set(place, new Row(row.resource(), row.line(), cells));
    add(row, column + " \"" + before + "\" became \"" + value + "\"", changed);
  }

  private void add(Row row, String words, List<Row> changed) {
    String where = row.resource() + " line " + row.line();
    changes.add(new LimitChange(row.required("id"), where, words, changed));
  }

  private static String cell(Row row, String column) {
    return row.cells().getOrDefault(column, "");
  }
}
