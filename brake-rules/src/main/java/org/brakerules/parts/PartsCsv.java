package org.brakerules.parts;

import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Writes parts lists as comma-separated values (RFC 4180), a row for each line. A cell that a
 * spreadsheet would take for a formula begins with an apostrophe.
 */
public final class PartsCsv {

  private static final List<String> COLUMNS =
      List.of(
          "reference",
          "date",
          "section",
          "where",
          "handling",
          "item",
          "description",
          "pieces",
          "confirm",
          "comes-with",
          "match",
          "parts",
          "reasons",
          "kit",
          "price",
          "currency");

  private static final ObjectWriter WRITER =
      new CsvMapper()
          .writerFor(Map.class)
          .with(
              COLUMNS.stream()
                  .reduce(CsvSchema.builder(), CsvSchema.Builder::addColumn, (some, more) -> some)
                  .build()
                  .withHeader()
                  .withLineSeparator("\r\n"));

  private PartsCsv() {}

  /** The parts list of a job: its wheel ends, axles and the vehicle. */
  public static String write(PartsList parts) {
    return written(parts, CsvRows.of(parts));
  }

  /** The parts list of a job with the kits that cover it. */
  public static String write(KitCover cover) {
    return written(cover.parts(), Stream.concat(CsvRows.of(cover.parts()), CsvRows.ofKits(cover)));
  }

  private static String written(PartsList parts, Stream<Map<String, String>> rows) {
    StringWriter text = new StringWriter();
    List<Map<String, String>> all = rows.toList();
    try (SequenceWriter out = WRITER.writeValues(text)) {
      for (Map<String, String> row : all) {
        out.write(cells(parts, row));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all.isEmpty() ? String.join(",", COLUMNS) + "\r\n" : text.toString();
  }

  private static Map<String, String> cells(PartsList parts, Map<String, String> row) {
    Map<String, String> common =
        Map.of("reference", parts.reference(), "date", parts.date().toString());
    return COLUMNS.stream()
        .collect(
            Collectors.toMap(
                column -> column,
                column -> harmless(row.getOrDefault(column, common.getOrDefault(column, "")))));
  }

  /** Whatever a shop wrote, no spreadsheet is to work it out. */
  private static String harmless(String cell) {
    String start = cell.stripLeading();
    boolean formula =
        !start.isEmpty() && "=+-@\uFF1D\uFF0B\uFF0D\uFF20".indexOf(start.charAt(0)) >= 0;
    boolean control = !cell.isEmpty() && Character.isISOControl(cell.charAt(0));
    return formula || control ? "'" + cell : cell;
  }
}
