package org.brakerules.internal.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The folders of the rule sets, one for each id of the table {@code rule-sets.csv}, which names
 * them because the files of a class path cannot be listed.
 */
public final class RuleSetFolders {

  /** The table that names every rule set, and with it its folder. */
  public static final String INDEX = "rule-sets.csv";

  private static final String RULE_SET = "rule-set";
  private static final String ITSELF = "rule-set.csv";
  private static final String LIMITS = "limits.csv";
  private static final String COMPARISONS = "comparisons.csv";

  private static final String RULES_OFF = "rules-off.csv";

  private final RuleBaseFiles files;

  RuleSetFolders(RuleBaseFiles files) {
    this.files = files;
  }

  /**
   * One row for each rule set, with its id in the column {@code id}.
   *
   * @throws RuleBaseException if there is no index, or a folder in it has no {@code rule-set.csv}
   */
  public static List<Row> ruleSets(RuleBaseFiles files) {
    return new RuleSetFolders(files).ruleSets();
  }

  /** The rows of comparisons of all rule sets, with the id of theirs in {@code rule-set}. */
  public static List<Row> comparisons(RuleBaseFiles files) {
    return new RuleSetFolders(files).all(COMPARISONS);
  }

  private List<Row> ruleSets() {
    return index().stream().map(this::itself).toList();
  }

  /** The rows of limits of all rule sets, as if they stood in the table of a component. */
  List<Row> limits() {
    return all(LIMITS);
  }

  /** The rows of rules that keep silent, with the id of their rule set. */
  List<Row> rulesOff() {
    return all(RULES_OFF);
  }

  /** The names of all files, in the order of the index. */
  Stream<String> names() {
    return index().stream()
        .map(row -> row.required("id"))
        .flatMap(
            id -> Stream.of(ITSELF, LIMITS, COMPARISONS, RULES_OFF).map(name -> file(id, name)));
  }

  private List<Row> index() {
    return files
        .open(INDEX)
        .map(in -> CsvTable.read(INDEX, in))
        .orElseThrow(() -> new RuleBaseException("The rule base has no " + INDEX + "."));
  }

  private Row itself(Row named) {
    String id = named.required("id");
    List<Row> rows = rows(file(id, ITSELF));
    if (rows.size() != 1) {
      throw named.mistake(
          "rule set \"" + id + "\" needs one row in " + file(id, ITSELF) + ", not " + rows.size());
    }
    return with(rows.get(0), "id", id);
  }

  private List<Row> all(String name) {
    List<Row> all = new ArrayList<>();
    for (Row named : index()) {
      String id = named.required("id");
      rows(file(id, name)).forEach(row -> all.add(with(row, RULE_SET, id)));
    }
    return all;
  }

  private List<Row> rows(String file) {
    return files.open(file).map(in -> CsvTable.read(file, in)).orElse(List.of());
  }

  private static Row with(Row row, String column, String cell) {
    Map<String, String> cells = new LinkedHashMap<>(row.cells());
    cells.put(column, cell);
    return new Row(row.resource(), row.line(), cells);
  }

  private static String file(String id, String name) {
    return "rule-sets/" + id + "/" + name;
  }
}
