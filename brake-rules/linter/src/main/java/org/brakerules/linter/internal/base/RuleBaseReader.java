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
import org.brakerules.linter.internal.cases.CaseFile;
import org.brakerules.linter.internal.cases.CaseFileReader;
import org.brakerules.linter.internal.text.SourceText;

/** Reads the folders of a rule base. */
public final class RuleBaseReader {

  /** Where the rule base lies below a folder of resources. */
  public static final String RULES = "org/brakerules/rules";

  /** Every ending that the rule compiler would pick up. */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  /** What is read in the folder of a component, behind its name. */
  private static final List<String> READ =
      List.of(
          ".drl", ".limits.csv", ".points.csv", ".equivalent-changes.csv", ".cases.yaml", ".md");

  private static final Set<String> COMPILED =
      Set.of("drl", "drlx", "dsl", "dslr", "rdrl", "rdslr", "brl", "gdst", "xls", "xlsx", "bpmn2");

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
    Table ruleSets = table(rules.resolve("rule-sets.csv"), Columns.RULE_SETS);
    return new RuleBase(
        components,
        table(rules.resolve("sources.csv"), Columns.SOURCES),
        ruleSets,
        new RuleSetReader(rules, this::table).read(ruleSets),
        table(rules.resolve("cautions.csv"), Columns.CAUTIONS),
        tableIfThere(rules.resolve("unread.csv"), Columns.UNREAD),
        tableIfThere(rules.resolve("coverage-open.csv"), Columns.COVERAGE_OPEN),
        tableIfThere(rules.resolve("conflicts.csv"), Columns.CONFLICTS),
        tableIfThere(rules.resolve("decision-tables.csv"), Columns.DECISION_TABLES),
        source(rules.resolve("sound-wheel-end.json")),
        strayFiles(components));
  }

  private Component component(Path folder) throws IOException {
    String name = folder.getFileName().toString();
    return new Component(
        name,
        source(folder.resolve(name + ".drl")).map(text -> RuleFileReader.read(name, text)),
        ownTable(folder, "limits", Columns.LIMITS),
        ownTable(folder, "points", Columns.POINTS),
        ownTable(folder, "equivalent-changes", Columns.EQUIVALENT_CHANGES),
        cases(folder.resolve(name + ".cases.yaml")));
  }

  private Optional<CaseFile> cases(Path path) throws IOException {
    return Files.exists(path)
        ? Optional.of(CaseFileReader.read(relative(path), text(path)))
        : Optional.empty();
  }

  private Optional<SourceText> source(Path path) throws IOException {
    return Files.exists(path)
        ? Optional.of(new SourceText(relative(path), text(path)))
        : Optional.empty();
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
      String text = Files.readString(path);
      // Spreadsheets begin a UTF-8 file with a mark that is no part of its first word.
      return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
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
        .filter(file -> isStray(file, components) && !known.contains(file))
        .toList();
  }

  /** Whether a rule compiler would read a file of this name wherever it lies. */
  public static boolean isCompiled(String file) {
    return COMPILED.contains(ending(file));
  }

  /** A file in the folder of a component that nobody reads has most likely a misspelt name. */
  private static boolean isStray(String file, List<Component> components) {
    return isCompiled(file)
        || components.stream()
            .filter(component -> component.rules().isPresent())
            .map(Component::name)
            .filter(name -> file.startsWith(RULES + "/" + name + "/"))
            .anyMatch(
                name ->
                    READ.stream()
                        .noneMatch(
                            suffix -> file.equals(RULES + "/" + name + "/" + name + suffix)));
  }

  private static String ending(String file) {
    return file.substring(file.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  private String relative(Path path) {
    return resources.relativize(path).toString().replace('\\', '/');
  }

  private List<Path> folders() throws IOException {
    try (Stream<Path> entries = Files.list(rules)) {
      return entries
          .filter(Files::isDirectory)
          .filter(folder -> !folder.endsWith(RuleSetReader.FOLDER))
          .sorted()
          .toList();
    }
  }

  private List<Path> everyFile() throws IOException {
    try (Stream<Path> entries = Files.walk(resources)) {
      return entries.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
