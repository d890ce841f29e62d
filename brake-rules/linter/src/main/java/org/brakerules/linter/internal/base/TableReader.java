package org.brakerules.linter.internal.base;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.linter.internal.text.Spot;
import org.brakerules.model.text.NearestName;

/** Reads a table with a header row, and remembers where each cell stands. */
final class TableReader {

  private static final CsvFactory FACTORY =
      CsvFactory.builder()
          .enable(CsvParser.Feature.WRAP_AS_ARRAY)
          .enable(CsvParser.Feature.TRIM_SPACES)
          .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
          .build();

  private final String file;
  private final List<String> columns;
  private final List<Row> rows = new ArrayList<>();
  private final List<Mistake> mistakes = new ArrayList<>();

  private TableReader(String file, List<String> columns) {
    this.file = file;
    this.columns = columns;
  }

  static Table read(String text, String file, List<String> columns) throws IOException {
    TableReader reader = new TableReader(file, columns);
    reader.read(text);
    return new Table(file, reader.rows, reader.mistakes);
  }

  static Table missing(String file, List<String> columns) {
    TableReader reader = new TableReader(file, columns);
    reader.mistake(
        new Spot(file, 1, 1), "there is no such table", "add it with " + reader.headerAsWritten());
    return new Table(file, reader.rows, reader.mistakes);
  }

  private void read(String text) throws IOException {
    if (text.isBlank()) {
      mistake(new Spot(file, 1, 1), "the table is empty", "begin it with " + headerAsWritten());
      return;
    }
    List<List<Cell>> lines = new ArrayList<>();
    try (CsvParser parser = FACTORY.createParser(text)) {
      readLines(parser, lines);
    } catch (JsonProcessingException e) {
      mistake(
          spot(e.getLocation()),
          "a quote in this row, or in one above it, is not closed or stands inside a cell",
          "put the whole cell between quotes, and write a quote inside it twice");
    }
    if (lines.isEmpty()) {
      return; // told as a mistake of its first line
    }
    List<String> header = lines.get(0).stream().map(Cell::text).toList();
    checkHeader(lines.get(0), header);
    lines.stream().skip(1).forEach(line -> addRow(header, line));
  }

  private void readLines(CsvParser parser, List<List<Cell>> lines) throws IOException {
    List<Cell> line = new ArrayList<>();
    for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
      if (token == JsonToken.VALUE_STRING) {
        line.add(new Cell(parser.getText(), spot(parser.currentTokenLocation())));
      } else if (token == JsonToken.END_ARRAY) {
        lines.add(List.copyOf(line));
        line.clear();
      }
    }
  }

  private void checkHeader(List<Cell> cells, List<String> header) {
    for (String column : columns) {
      if (!header.contains(column)) {
        mistake(
            new Spot(file, 1, 1),
            "there is no column \"" + column + "\"",
            "begin the table with " + headerAsWritten());
      }
    }
    for (Cell cell : cells) {
      if (!columns.contains(cell.text())) {
        mistake(
            cell.spot(),
            "\"" + cell.text() + "\" is no column of this table",
            NearestName.of(cell.text(), columns)
                .map(near -> "write \"" + near + "\"")
                .orElse("begin the table with " + headerAsWritten()));
      }
    }
  }

  private void addRow(List<String> header, List<Cell> line) {
    if (line.isEmpty()) {
      return;
    }
    Spot start = line.get(0).spot();
    if (line.size() != header.size() && !isWholeUnder(header, line)) {
      mistake(
          start,
          "the row has " + line.size() + " cells, the header " + header.size(),
          "give each column one cell, an empty one if need be; put a cell with a comma in quotes");
    }
    Map<String, Cell> cells = new LinkedHashMap<>();
    for (int i = 0; i < Math.min(header.size(), line.size()); i++) {
      cells.put(header.get(i), line.get(i));
    }
    rows.add(new Row(start, cells));
  }

  /** A row with every cell is no mistake of its own where the header has lost a column. */
  private boolean isWholeUnder(List<String> header, List<Cell> line) {
    return !header.containsAll(columns) && line.size() == columns.size();
  }

  private String headerAsWritten() {
    return "\"" + String.join(",", columns) + "\"";
  }

  private Spot spot(JsonLocation location) {
    return new Spot(file, Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
  }

  private void mistake(Spot spot, String message, String remedy) {
    mistakes.add(new Mistake(spot, message, remedy));
  }
}
