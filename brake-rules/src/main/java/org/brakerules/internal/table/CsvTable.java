package org.brakerules.internal.table;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a table with a header row. */
public final class CsvTable {

  /** The streaming part alone: binding to objects would take longer to set up than to read. */
  private static final CsvFactory CSV =
      CsvFactory.builder()
          .enable(CsvParser.Feature.TRIM_SPACES)
          .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
          .build();

  private static final CsvSchema WITH_HEADER = CsvSchema.emptySchema().withHeader();

  private CsvTable() {}

  /** The rows of a table that this artifact brings. */
  public static List<Row> ofResource(String resource) {
    InputStream in = CsvTable.class.getResourceAsStream(resource);
    if (in == null) {
      throw new RuleBaseException("There is no " + resource + ".");
    }
    return read(resource, in);
  }

  /**
   * The rows of a table that lies open.
   *
   * @param resource the name of the table, for messages
   * @param in its text; closed when it is read
   */
  public static List<Row> read(String resource, InputStream in) {
    List<Row> rows = new ArrayList<>();
    try (CsvParser cells = CSV.createParser(in)) {
      cells.setSchema(WITH_HEADER);
      while (cells.nextToken() == JsonToken.START_OBJECT) {
        rows.add(new Row(resource, rows.size() + 2, row(cells)));
      }
    } catch (IOException e) {
      throw new RuleBaseException(resource + " cannot be read: " + e.getMessage(), e);
    }
    return rows;
  }

  private static Map<String, String> row(CsvParser cells) throws IOException {
    Map<String, String> row = new LinkedHashMap<>();
    for (String column = cells.nextFieldName(); column != null; column = cells.nextFieldName()) {
      row.put(column, cells.nextTextValue());
    }
    return row;
  }
}
