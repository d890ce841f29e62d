package org.brakerules.trial.provision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.trial.provision.Provision.Kind;

/** Limits and inspection points, from the rows of their tables. */
final class RowProvisions {

  /** All but the note. */
  private static final List<String> LIMIT_COLUMNS =
      List.of(
          "comparison",
          "value",
          "station",
          "methods",
          "moment",
          "applies-to",
          "rule-set",
          "from",
          "to",
          "source");

  /** All but the instrument and how to use it. */
  private static final List<String> POINT_COLUMNS =
      List.of("at", "needed-from", "applies-to", "needed", "brake", "finds");

  private RowProvisions() {}

  static List<Provision> limits(Stream<Row> rows) {
    return provisions(Kind.LIMIT, rows, LIMIT_COLUMNS);
  }

  static List<Provision> points(Stream<Row> rows) {
    return provisions(Kind.POINT, rows, POINT_COLUMNS);
  }

  private static List<Provision> provisions(Kind kind, Stream<Row> rows, List<String> columns) {
    Map<String, List<Row>> byId =
        rows.collect(
            Collectors.groupingBy(
                row -> row.text("id"),
                LinkedHashMap::new,
                Collectors.toCollection(ArrayList::new)));
    return byId.entrySet().stream()
        .map(entry -> provision(kind, entry.getKey(), entry.getValue(), columns))
        .toList();
  }

  private static Provision provision(Kind kind, String id, List<Row> rows, List<String> columns) {
    return new Provision(
        kind,
        id,
        rows.get(0).text("part") + "." + rows.get(0).text("property"),
        rows.stream().map(row -> text(row, columns)).toList());
  }

  private static String text(Row row, List<String> columns) {
    return columns.stream()
        .filter(column -> !row.text(column).isEmpty())
        .map(column -> column + " " + row.text(column))
        .collect(Collectors.joining(" | "));
  }
}
