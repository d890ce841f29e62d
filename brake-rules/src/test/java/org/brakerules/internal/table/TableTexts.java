package org.brakerules.internal.table;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.brakerules.model.part.PartKind;

/** Tables that a test writes down itself. */
public final class TableTexts {

  private static final String LIMITS =
      "id,part,property,comparison,value,station,methods,moment,applies-to,rule-set,from,to,source,note\n";
  private static final String POINTS =
      "id,part,property,at,needed-from,applies-to,needed,brake,finds,instrument,how\n";

  private TableTexts() {}

  /** A table of limits with the sources and rule sets of the standard rule base. */
  public static LimitTable limits(String... rows) {
    Tables standard = Tables.load();
    return new LimitTable(read(LIMITS, rows), List.of(), standard.sources(), standard.ruleSets());
  }

  /** A table of inspection points. */
  public static PointTable points(String... rows) {
    return new PointTable(read(POINTS, rows));
  }

  /** A selector as the column applies-to writes it. */
  public static Selector selector(String text, PartKind kind) {
    return Selector.parse(
        new Row("invented.csv", 2, Map.of("applies-to", text)), "applies-to", kind);
  }

  /** The rows of any table. */
  static List<Row> rows(String header, String... rows) {
    return read(header + "\n", rows);
  }

  private static List<Row> read(String header, String... rows) {
    String text = header + String.join("\n", rows);
    return CsvTable.read(
        "invented.csv", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
  }
}
