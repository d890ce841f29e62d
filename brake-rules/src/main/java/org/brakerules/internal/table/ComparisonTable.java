package org.brakerules.internal.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Source;
import org.brakerules.model.job.RuleSet;

/**
 * On which side a rule set holds a limit whose rows hold in every rule set: the same figures for
 * the same parts, with another comparison and the rule set's own source.
 */
final class ComparisonTable {

  /** One row, with the rule set of its folder. */
  private record Held(
      Row row, String limit, RuleSet under, Comparison comparison, Source source, String note) {

    boolean isOf(LimitRow of) {
      return of.limit().id().equals(limit) && of.limit().ruleSet().isEmpty();
    }
  }

  private final List<Held> all = new ArrayList<>();
  private final SourceTable sources;

  ComparisonTable(Iterable<Row> rows, SourceTable sources, RuleSetTable ruleSets) {
    this.sources = sources;
    for (Row row : rows) {
      Held held = read(row, sources, ruleSets);
      if (all.stream()
          .anyMatch(one -> one.limit().equals(held.limit()) && one.under().equals(held.under()))) {
        throw row.mistake("\"" + held.limit() + "\" is there twice");
      }
      all.add(held);
    }
  }

  private static Held read(Row row, SourceTable sources, RuleSetTable ruleSets) {
    return new Held(
        row,
        row.required("limit"),
        LimitTable.ruleSet(row, row.required("rule-set"), ruleSets),
        LimitTable.comparison(row),
        LimitTable.source(row, row.required("source"), sources),
        row.text("note"));
  }

  /**
   * The rows as they hold: each as it is written, and once more for every rule set that holds it on
   * another side.
   *
   * @throws RuleBaseException if a row of comparisons names a limit without such a row
   */
  List<LimitRow> apply(List<LimitRow> written) {
    for (Held held : all) {
      if (written.stream().noneMatch(held::isOf)) {
        throw held.row()
            .mistake("no row of a limit \"" + held.limit() + "\" holds in every rule set");
      }
    }
    return Stream.concat(
            written.stream().map(this::asWritten), written.stream().flatMap(this::held))
        .toList();
  }

  private LimitRow asWritten(LimitRow row) {
    List<RuleSet> except = all.stream().filter(held -> held.isOf(row)).map(Held::under).toList();
    return except.isEmpty() ? row : row.exceptUnder(except);
  }

  private Stream<LimitRow> held(LimitRow row) {
    return all.stream().filter(held -> held.isOf(row)).map(held -> held(row, held));
  }

  private LimitRow held(LimitRow row, Held as) {
    Limit limit = row.limit().heldAs(as.under(), as.comparison(), as.source(), as.note());
    return row.held(limit, sources.lawOf(as.source()));
  }
}
