package org.brakerules.linter.internal.base;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Reads the folders of the rule sets: those that the index names, and those that are there. */
final class RuleSetReader {

  /** The folder that holds them. */
  static final String FOLDER = "rule-sets";

  private static final String ITSELF = "rule-set.csv";
  private static final String LIMITS = "limits.csv";
  private static final String COMPARISONS = "comparisons.csv";
  private static final String RULES_OFF = "rules-off.csv";
  private static final Set<String> FILES = Set.of(ITSELF, LIMITS, COMPARISONS, RULES_OFF);

  /** Reads one table. */
  @FunctionalInterface
  interface Tables {
    Table read(Path path, List<String> columns) throws IOException;
  }

  private final Path folder;
  private final Tables tables;

  RuleSetReader(Path rules, Tables tables) {
    this.folder = rules.resolve(FOLDER);
    this.tables = tables;
  }

  List<RuleSetFolder> read(Table index) throws IOException {
    Set<String> ids = new TreeSet<>(index.column("id"));
    ids.remove("");
    ids.addAll(names(folder));
    List<RuleSetFolder> read = new ArrayList<>();
    for (String id : ids) {
      read.add(read(id));
    }
    return read;
  }

  private RuleSetFolder read(String id) throws IOException {
    Path own = folder.resolve(id);
    return new RuleSetFolder(
        id,
        tables.read(own.resolve(ITSELF), Columns.RULE_SET),
        ifThere(own.resolve(LIMITS), Columns.LIMITS_OF_RULE_SET),
        ifThere(own.resolve(COMPARISONS), Columns.COMPARISONS),
        ifThere(own.resolve(RULES_OFF), Columns.RULES_OFF),
        names(own).stream().filter(name -> !FILES.contains(name)).toList());
  }

  private Optional<Table> ifThere(Path path, List<String> columns) throws IOException {
    return Files.exists(path) ? Optional.of(tables.read(path, columns)) : Optional.empty();
  }

  private static List<String> names(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.map(entry -> entry.getFileName().toString()).sorted().toList();
    }
  }
}
