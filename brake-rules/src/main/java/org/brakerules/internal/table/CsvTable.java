package org.brakerules.internal.table;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads a table with a header row. */
public final class CsvTable {

  private static final ObjectReader READER =
      new CsvMapper()
          .enable(CsvParser.Feature.TRIM_SPACES)
          .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
          .readerForMapOf(String.class)
          .with(CsvSchema.emptySchema().withHeader());

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
    try (MappingIterator<Map<String, String>> lines = READER.readValues(in)) {
      while (lines.hasNext()) {
        rows.add(new Row(resource, rows.size() + 2, lines.next()));
      }
    } catch (IOException e) {
      throw new RuleBaseException(resource + " cannot be read: " + e.getMessage(), e);
    }
    return rows;
  }
}
