package org.brakerules.harness.changes;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.harness.WholeFile;
import org.brakerules.trial.provision.Provision;
import org.brakerules.trial.provision.Provision.Kind;

/** The record of a release: a table with one row for each line of each provision. */
final class ReleaseFile {

  static final String ENDING = ".csv";

  private static final CsvMapper MAPPER =
      CsvMapper.builder().enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING).build();
  private static final CsvSchema SCHEMA =
      CsvSchema.builder()
          .addColumns(List.of("kind", "id", "of", "text"), CsvSchema.ColumnType.STRING)
          .build()
          .withHeader();

  private ReleaseFile() {}

  /** Writes a record whole or not at all. */
  static void write(Path file, Release release) throws IOException {
    StringWriter text = new StringWriter();
    try (SequenceWriter rows = MAPPER.writer(SCHEMA).writeValues(text)) {
      for (Provision provision : release.provisions().values()) {
        for (String line : provision.lines()) {
          rows.write(row(provision, line));
        }
      }
    }
    WholeFile.write(file, text.toString());
  }

  /** The version that the name of a record says. */
  static String version(Path file) {
    String name = file.getFileName().toString();
    return name.substring(0, name.length() - ENDING.length());
  }

  private static Map<String, String> row(Provision provision, String line) {
    return Map.of(
        "kind",
        provision.kind().inWords(),
        "id",
        provision.id(),
        "of",
        provision.of(),
        "text",
        line);
  }

  static Release read(Path file) throws IOException {
    Map<String, List<Map<String, String>>> byId = new LinkedHashMap<>();
    try (MappingIterator<Map<String, String>> rows =
        MAPPER.readerForMapOf(String.class).with(SCHEMA).readValues(Files.readString(file))) {
      rows.forEachRemaining(
          row -> byId.computeIfAbsent(cell(row, "id"), id -> new ArrayList<>()).add(row));
      return Release.of(version(file), byId.values().stream().map(ReleaseFile::provision).toList());
    } catch (RuntimeException notAsWritten) {
      throw new IOException(
          file + " is no record of a release: " + notAsWritten.getMessage(), notAsWritten);
    }
  }

  private static Provision provision(List<Map<String, String>> rows) {
    Map<String, String> first = rows.get(0);
    return new Provision(
        kind(cell(first, "kind")),
        cell(first, "id"),
        cell(first, "of"),
        rows.stream().map(row -> cell(row, "text")).toList());
  }

  private static Kind kind(String inWords) {
    return Arrays.stream(Kind.values())
        .filter(kind -> kind.inWords().equals(inWords))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("\"" + inWords + "\" is no kind"));
  }

  private static String cell(Map<String, String> row, String column) {
    String cell = row.get(column);
    if (cell == null) {
      throw new IllegalArgumentException("a row has no \"" + column + "\"");
    }
    return cell;
  }
}
