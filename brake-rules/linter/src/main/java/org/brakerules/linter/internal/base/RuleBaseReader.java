package org.brakerules.linter.internal.base;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.linter.internal.text.SourceText;

/** Reads the folders of a rule base. */
public final class RuleBaseReader {

  /** Where the rule base lies below a folder of resources. */
  public static final String RULES = "org/brakerules/rules";

  /** Every ending that the rule compiler would pick up. */
  private static final Set<String> COMPILED =
      Set.of("drl", "drlx", "dsl", "dslr", "rdrl", "rdslr", "brl", "gdst", "xls", "xlsx", "bpmn2");

  private static final List<String> LIMIT_COLUMNS =
      List.of(
          "id",
          "part",
          "property",
          "comparison",
          "value",
          "station",
          "methods",
          "moment",
          "applies-to",
          "rule-set",
          "from",
          "to",
          "source",
          "note");

  private static final List<String> POINT_COLUMNS =
      List.of(
          "id",
          "part",
          "property",
          "at",
          "needed-from",
          "applies-to",
          "needed",
          "brake",
          "finds",
          "instrument",
          "how");

  private static final List<String> SOURCE_COLUMNS =
      List.of("id", "title", "standing", "rule-set", "note");

  private static final List<String> RULE_SET_COLUMNS =
      List.of(
          "id",
          "title",
          "test-pressure-least",
          "test-pressure-most",
          "test-pressure-source",
          "automatic-adjusters-from",
          "automatic-adjusters-source");

  private static final List<String> UNREAD_COLUMNS = List.of("id", "reason");

  private static final List<String> CAUTION_COLUMNS = List.of("id", "from", "text", "source");

  private final Path resources;
  private final Path rules;

  private RuleBaseReader(Path resources) {
    this.resources = resources;
    this.rules = resources.resolve(RULES);
  }

  /**
   * Reads the rule base below a folder of resources.
   *
   * @throws IOException if there is none or it cannot be read
   */
  public static RuleBase read(Path resources) throws IOException {
    return new RuleBaseReader(resources).read();
  }

  private RuleBase read() throws IOException {
    if (!Files.isDirectory(rules)) {
      throw new FileNotFoundException(
          (Files.isDirectory(resources) ? "it holds no " + RULES : "there is no such folder")
              + "; name the folder that holds "
              + RULES
              + ", such as src/main/resources");
    }
    List<Component> components = new ArrayList<>();
    for (Path folder : folders()) {
      components.add(component(folder));
    }
    return new RuleBase(
        components,
        table(rules.resolve("sources.csv"), SOURCE_COLUMNS),
        table(rules.resolve("rule-sets.csv"), RULE_SET_COLUMNS),
        table(rules.resolve("cautions.csv"), CAUTION_COLUMNS),
        tableIfThere(rules.resolve("unread.csv"), UNREAD_COLUMNS),
        strayFiles(components));
  }

  private Component component(Path folder) throws IOException {
    String name = folder.getFileName().toString();
    Path ruleFile = folder.resolve(name + ".drl");
    Optional<RuleFile> read =
        Files.exists(ruleFile)
            ? Optional.of(
                RuleFileReader.read(name, new SourceText(relative(ruleFile), text(ruleFile))))
            : Optional.empty();
    return new Component(
        name,
        read,
        ownTable(folder, "limits", LIMIT_COLUMNS),
        ownTable(folder, "points", POINT_COLUMNS));
  }

  private Optional<Table> ownTable(Path folder, String what, List<String> columns)
      throws IOException {
    return tableIfThere(folder.resolve(folder.getFileName() + "." + what + ".csv"), columns);
  }

  private Optional<Table> tableIfThere(Path path, List<String> columns) throws IOException {
    return Files.exists(path) ? Optional.of(table(path, columns)) : Optional.empty();
  }

  private Table table(Path path, List<String> columns) throws IOException {
    return Files.exists(path)
        ? TableReader.read(text(path), relative(path), columns)
        : TableReader.missing(relative(path), columns);
  }

  private String text(Path path) throws IOException {
    try {
      return Files.readString(path);
    } catch (CharacterCodingException e) {
      throw new IOException(relative(path) + " is no UTF-8 text; save it as UTF-8", e);
    } catch (FileSystemException e) {
      throw new IOException(relative(path) + " cannot be opened; allow it to be read", e);
    }
  }

  private List<String> strayFiles(List<Component> components) throws IOException {
    List<String> known =
        components.stream()
            .map(Component::rules)
            .flatMap(Optional::stream)
            .map(file -> file.source().file())
            .toList();
    return everyFile().stream()
        .map(this::relative)
        .filter(file -> COMPILED.contains(ending(file)) && !known.contains(file))
        .toList();
  }

  private static String ending(String file) {
    return file.substring(file.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  private String relative(Path path) {
    return resources.relativize(path).toString().replace('\\', '/');
  }

  private List<Path> folders() throws IOException {
    try (Stream<Path> entries = Files.list(rules)) {
      return entries.filter(Files::isDirectory).sorted().toList();
    }
  }

  private List<Path> everyFile() throws IOException {
    try (Stream<Path> entries = Files.walk(resources)) {
      return entries.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
