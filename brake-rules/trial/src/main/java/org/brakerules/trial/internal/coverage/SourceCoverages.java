package org.brakerules.trial.internal.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.RuleSetFolders;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Source;
import org.brakerules.trial.coverage.ClauseCoverage;
import org.brakerules.trial.coverage.SourceCoverage;

/** What rests on each source, clause by clause. */
public final class SourceCoverages {

  private enum Kind {
    RULE,
    LIMIT,
    OTHER
  }

  /** Something that rests on a source. */
  private record Resting(Source on, Kind kind, String name) {}

  private final Tables tables;
  private final List<Resting> resting = new ArrayList<>();

  private SourceCoverages(Tables tables) {
    this.tables = tables;
  }

  /** What rests on each source, in the order of the table of sources. */
  public static List<SourceCoverage> of(Tables tables, List<RuleText> rules, RuleBaseFiles files) {
    SourceCoverages coverages = new SourceCoverages(tables);
    coverages.rules(rules);
    coverages.limits();
    coverages.others(rows(files, "cautions.csv"), "caution ", List.of("source"));
    coverages.others(
        RuleSetFolders.ruleSets(files),
        "rule set ",
        List.of("test-pressure-source", "automatic-adjusters-source"));
    return tables.sources().ids().stream().map(coverages::source).toList();
  }

  private void rules(List<RuleText> rules) {
    for (RuleText rule : rules) {
      rule.sources().forEach(source -> resting.add(new Resting(source, Kind.RULE, rule.id())));
    }
  }

  private void limits() {
    RowNames names = new RowNames(tables.limits());
    for (LimitRow row : tables.limits().rows().toList()) {
      resting.add(new Resting(row.limit().source(), Kind.LIMIT, names.of(row)));
    }
  }

  private static List<Row> rows(RuleBaseFiles files, String file) {
    return files.open(file).map(in -> CsvTable.read(file, in)).orElse(List.of());
  }

  private void others(List<Row> rows, String what, List<String> columns) {
    for (Row row : rows) {
      columns.stream()
          .flatMap(column -> Arrays.stream(row.cells().getOrDefault(column, "").split(";")))
          .flatMap(citation -> tables.sources().find(citation.strip()).stream())
          .map(source -> new Resting(source, Kind.OTHER, what + row.required("id")))
          .forEach(resting::add);
    }
  }

  private SourceCoverage source(String id) {
    Source whole = tables.sources().find(id).orElseThrow();
    Map<String, List<Resting>> byClause = new TreeMap<>(Comparator.naturalOrder());
    resting.stream()
        .filter(one -> one.on().id().equals(id))
        .forEach(
            one ->
                byClause.computeIfAbsent(one.on().clause(), clause -> new ArrayList<>()).add(one));
    return new SourceCoverage(
        id,
        whole.title(),
        whole.standing().inWords(),
        byClause.entrySet().stream()
            .map(entry -> clause(entry.getKey(), entry.getValue()))
            .toList());
  }

  private static ClauseCoverage clause(String clause, List<Resting> on) {
    return new ClauseCoverage(
        clause,
        names(on, Kind.RULE).toList(),
        names(on, Kind.LIMIT).toList(),
        names(on, Kind.OTHER).toList());
  }

  private static Stream<String> names(List<Resting> resting, Kind kind) {
    return resting.stream().filter(one -> one.kind() == kind).map(Resting::name).distinct();
  }
}
