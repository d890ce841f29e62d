package org.brakerules.harness.reference;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.brakerules.BrakeRules;

/** The files of a rule base as their authors left them, where an auditor can read them as well. */
public final class RuleBaseFiles {

  private static final String RULES = "org/brakerules/rules/";
  private static final ObjectReader TABLES =
      new CsvMapper().readerForMapOf(String.class).with(CsvSchema.emptySchema().withHeader());

  private final Function<String, Optional<URL>> files;

  private RuleBaseFiles(Function<String, Optional<URL>> files) {
    this.files = files;
  }

  /** Those that this program brings. */
  public static RuleBaseFiles ofThisArtifact() {
    return new RuleBaseFiles(
        name -> Optional.ofNullable(BrakeRules.class.getResource("/" + RULES + name)));
  }

  /** Those below a folder with {@code org/brakerules/rules} in it. */
  static RuleBaseFiles in(Path resources) {
    return new RuleBaseFiles(name -> find(resources.resolve(RULES).resolve(name)));
  }

  private static Optional<URL> find(Path file) {
    try {
      return Files.exists(file) ? Optional.of(file.toUri().toURL()) : Optional.empty();
    } catch (MalformedURLException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A text; empty if there is none of that name. */
  Optional<String> text(String name) {
    return files.apply(name).map(RuleBaseFiles::text);
  }

  private static String text(URL file) {
    try (InputStream in = file.openStream()) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One row of a table. */
  public record Row(Map<String, String> cells) {

    public String get(String column) {
      return cells.getOrDefault(column, "");
    }

    Row with(String column, String cell) {
      Map<String, String> more = new LinkedHashMap<>(cells);
      more.put(column, cell);
      return new Row(more);
    }

    /** The names in a cell that holds several, with semicolons between them. */
    public List<String> names(String column) {
      return Arrays.stream(get(column).split(";", -1))
          .map(String::strip)
          .filter(name -> !name.isEmpty())
          .toList();
    }
  }

  /**
   * The rows of a table; none if there is no such table.
   *
   * @throws BookMistake if it is no table
   */
  public List<Row> rows(String name) {
    return text(name).map(text -> rows(name, text)).orElse(List.of());
  }

  private static List<Row> rows(String name, String text) {
    try (MappingIterator<Map<String, String>> rows = TABLES.readValues(text)) {
      return rows.readAll().stream().map(Row::new).toList();
    } catch (JsonProcessingException mistake) {
      throw new BookMistake(name + " cannot be read as a table: " + mistake.getOriginalMessage());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
