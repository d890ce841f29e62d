package org.brakerules.internal.table;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.model.part.PartKind;

/**
 * Everything the rule base knows beside its rules.
 *
 * @param sources the sources
 * @param ruleSets the rule sets
 * @param limits the limits
 * @param points the inspection points
 * @param cautions the cautions
 */
public record Tables(
    SourceTable sources,
    RuleSetTable ruleSets,
    LimitTable limits,
    PointTable points,
    CautionTable cautions) {

  /** The folder of the rules that lead from a pattern of wear to its causes. */
  private static final String CAUSE = "cause";

  /** The folder of the rule base in the class path. */
  public static final String ROOT = "/org/brakerules/rules/";

  /**
   * Reads the tables that lie beside the rule files.
   *
   * @throws RuleBaseException if a table has a mistake
   */
  public static Tables load() {
    SourceTable sources = new SourceTable(rows("sources.csv"));
    RuleSetTable ruleSets = new RuleSetTable(rows("rule-sets.csv"));
    return new Tables(
        sources,
        ruleSets,
        new LimitTable(ofEveryComponent("limits.csv"), sources, ruleSets),
        new PointTable(ofEveryComponent("points.csv")),
        new CautionTable(rows("cautions.csv"), sources));
  }

  /** The folders of rules: one for each kind of part, and one for the causes of what is found. */
  public static List<String> components() {
    return Stream.concat(Arrays.stream(PartKind.values()).map(PartKind::id), Stream.of(CAUSE))
        .toList();
  }

  /** The file of a component, such as {@code camshaft/camshaft.limits.csv}. */
  public static String file(String component, String suffix) {
    return component + "/" + component + "." + suffix;
  }

  /** Opens a file of the rule base; empty if there is none. */
  public static Optional<InputStream> open(String file) {
    return Optional.ofNullable(Tables.class.getResourceAsStream(ROOT + file));
  }

  private static List<Row> rows(String file) {
    return open(file)
        .map(in -> CsvTable.read(file, in))
        .orElseThrow(() -> new RuleBaseException("The rule base has no " + file + "."));
  }

  private static List<Row> ofEveryComponent(String suffix) {
    List<Row> rows = new ArrayList<>();
    for (String component : components()) {
      String file = file(component, suffix);
      open(file).ifPresent(in -> rows.addAll(CsvTable.read(file, in)));
    }
    return rows;
  }
}
