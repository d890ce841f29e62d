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
 * @param rulesOff the rules that keep silent under a rule set
 * @param points the inspection points
 * @param cautions the cautions
 */
public record Tables(
    SourceTable sources,
    RuleSetTable ruleSets,
    LimitTable limits,
    RulesOffTable rulesOff,
    PointTable points,
    CautionTable cautions) {

  /** The folder of the rules that lead from a pattern of wear to its causes. */
  private static final String CAUSE = "cause";

  /**
   * Reads the tables of this artifact.
   *
   * @throws RuleBaseException if a table has a mistake
   */
  public static Tables load() {
    return load(RuleBasePack.ofThisArtifact());
  }

  /**
   * Reads the tables that lie beside the rule files.
   *
   * @throws RuleBaseException if a table has a mistake
   */
  public static Tables load(RuleBaseFiles files) {
    SourceTable sources = new SourceTable(rows(files, "sources.csv"));
    RuleSetTable ruleSets = new RuleSetTable(RuleSetFolders.ruleSets(files));
    return new Tables(
        sources,
        ruleSets,
        new LimitTable(limitRows(files), RuleSetFolders.comparisons(files), sources, ruleSets),
        new RulesOffTable(new RuleSetFolders(files).rulesOff(), sources, ruleSets),
        new PointTable(ofEveryComponent(files, "points.csv")),
        new CautionTable(rows(files, "cautions.csv"), sources));
  }

  /** The rows of all tables of limits, those of the rule sets with the id of theirs. */
  public static List<Row> limitRows(RuleBaseFiles files) {
    List<Row> rows = new RuleSetFolders(files).limits();
    rows.addAll(ofEveryComponent(files, "limits.csv"));
    return rows;
  }

  /**
   * The same tables with other limits, and other comparisons of the rule sets.
   *
   * @throws RuleBaseException if a row has a mistake
   */
  public Tables withLimits(List<Row> rows, List<Row> comparisons) {
    LimitTable others = new LimitTable(rows, comparisons, sources, ruleSets);
    return new Tables(sources, ruleSets, others, rulesOff, points, cautions);
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

  /** Opens a file of this artifact's rule base; empty if there is none. */
  public static Optional<InputStream> open(String file) {
    return RuleBaseFiles.ofThisArtifact().open(file);
  }

  private static List<Row> rows(RuleBaseFiles files, String file) {
    return files
        .open(file)
        .map(in -> CsvTable.read(file, in))
        .orElseThrow(() -> new RuleBaseException("The rule base has no " + file + "."));
  }

  private static List<Row> ofEveryComponent(RuleBaseFiles files, String suffix) {
    List<Row> rows = new ArrayList<>();
    for (String component : components()) {
      String file = file(component, suffix);
      files.open(file).ifPresent(in -> rows.addAll(CsvTable.read(file, in)));
    }
    return rows;
  }
}
