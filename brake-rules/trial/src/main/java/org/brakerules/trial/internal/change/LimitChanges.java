package org.brakerules.trial.internal.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.brakerules.internal.table.Row;

/** Every small change of the rows of limits and comparisons that somebody could make by mistake. */
public final class LimitChanges {

  private static final String LEFT_OUT = "row left out";
  private static final Map<String, List<String>> COMPARISONS =
      Map.of(
          "at most", List.of("less than", "at least"),
          "less than", List.of("at most", "more than"),
          "at least", List.of("more than", "at most"),
          "more than", List.of("at least", "less than"));

  private final List<Row> rows;
  private final List<Row> comparisons;
  private final List<LimitChange> changes = new ArrayList<>();

  private LimitChanges(List<Row> rows, List<Row> comparisons) {
    this.rows = rows;
    this.comparisons = comparisons;
  }

  /**
   * The changes of all rows, row by row.
   *
   * @param rows all rows of limits
   * @param comparisons all rows of comparisons of the rule sets
   */
  public static List<LimitChange> of(List<Row> rows, List<Row> comparisons) {
    LimitChanges changes = new LimitChanges(rows, comparisons);
    for (int i = 0; i < rows.size(); i++) {
      changes.row(i);
    }
    for (int i = 0; i < comparisons.size(); i++) {
      changes.comparison(i);
    }
    return List.copyOf(changes.changes);
  }

  private void comparison(int place) {
    Row row = comparisons.get(place);
    addComparisons(row, LEFT_OUT, without(comparisons, place));
    COMPARISONS
        .getOrDefault(row.required("comparison"), List.of())
        .forEach(
            other ->
                addComparisons(
                    row,
                    became(row, "comparison", other),
                    with(comparisons, place, changed(row, "comparison", other))));
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
    add(rows.get(place), LEFT_OUT, without(rows, place));
  }

  private void set(int place, String column, String value) {
    Row row = rows.get(place);
    add(row, became(row, column, value), with(rows, place, changed(row, column, value)));
  }

  private static List<Row> without(List<Row> all, int place) {
    List<Row> fewer = new ArrayList<>(all);
    fewer.remove(place);
    return fewer;
  }

  private static List<Row> with(List<Row> all, int place, Row other) {
    List<Row> changed = new ArrayList<>(all);
    changed.set(place, other);
    return changed;
  }

  private static Row changed(Row row, String column, String value) {
    Map<String, String> cells = new LinkedHashMap<>(row.cells());
    cells.put(column, value);
    return new Row(row.resource(), row.line(), cells);
  }

  private static String became(Row row, String column, String value) {
    return column + " \"" + cell(row, column) + "\" became \"" + value + "\"";
  }

  private void add(Row row, String words, List<Row> changed) {
    changes.add(new LimitChange(row.required("id"), where(row), words, changed, comparisons));
  }

  private void addComparisons(Row row, String words, List<Row> changed) {
    changes.add(new LimitChange(row.required("limit"), where(row), words, rows, changed));
  }

  private static String where(Row row) {
    return row.resource() + " line " + row.line();
  }

  private static String cell(Row row, String column) {
    return row.cells().getOrDefault(column, "");
  }
}
