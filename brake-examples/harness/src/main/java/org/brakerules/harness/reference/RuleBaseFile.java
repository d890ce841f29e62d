package org.brakerules.harness.reference;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.BrakeRules;

/** A file of the rule base as it lies in the jar, where an auditor can read it as well. */
final class RuleBaseFile {

  private static final ObjectReader TABLES =
      new CsvMapper().readerForMapOf(String.class).with(CsvSchema.emptySchema().withHeader());

  private RuleBaseFile() {}

  static Optional<String> text(String name) {
    try (InputStream in = BrakeRules.class.getResourceAsStream("/org/brakerules/rules/" + name)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One row of a table. */
  record Row(Map<String, String> cells) {

    String get(String column) {
      return cells.getOrDefault(column, "");
    }

    /** The names in a cell that holds several, with semicolons between them. */
    List<String> names(String column) {
      return Arrays.stream(get(column).split(";", -1))
          .map(String::strip)
          .filter(name -> !name.isEmpty())
          .toList();
    }
  }

  /** The rows of a table; none if there is no such table. */
  static List<Row> rows(String name) {
    Optional<String> text = text(name);
    if (text.isEmpty()) {
      return List.of();
    }
    try (MappingIterator<Map<String, String>> rows = TABLES.readValues(text.get())) {
      return rows.readAll().stream().map(Row::new).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
