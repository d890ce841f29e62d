package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.Table;

/** Some columns mean something when they are empty; these do not. */
final class MissingCellCheck implements Check {

  private static final List<String> LIMITS = List.of("id", "part", "property", "comparison");
  private static final List<String> POINTS =
      List.of("id", "part", "property", "needed-from", "needed", "brake", "finds", "how");
  private static final List<String> SOURCES = List.of("id", "title", "standing");
  private static final List<String> RULE_SETS = List.of("id");
  private static final List<String> RULE_SET = List.of("title");
  private static final List<String> COMPARISONS = List.of("limit", "comparison");
  private static final List<String> RULES_OFF = List.of("rule", "reason");
  private static final List<String> CAUTIONS = List.of("id", "from", "text");
  private static final List<String> UNREAD = List.of("id", "reason");
  private static final List<String> EQUIVALENT_CHANGES = List.of("of", "change", "reason");
  private static final List<String> COVERAGE_OPEN = List.of("what", "id", "reason");
  private static final List<String> CONFLICTS =
      List.of("id", "what", "source-a", "says-a", "says-b", "default-takes", "why", "concerns");
  private static final List<String> DECISION_TABLES = List.of("table", "part", "sign");

  @Override
  public void check(RuleBase base, Findings findings) {
    check(base.limits(), LIMITS, findings);
    check(base.points(), POINTS, findings);
    check(base.sources().rows().stream(), SOURCES, findings);
    check(base.ruleSets().rows().stream(), RULE_SETS, findings);
    check(base.ruleSetRows(), RULE_SET, findings);
    check(base.comparisons(), COMPARISONS, findings);
    check(base.rulesOff(), RULES_OFF, findings);
    check(base.cautions().rows().stream(), CAUTIONS, findings);
    check(base.unreadRows().stream(), UNREAD, findings);
    check(rows(base.equivalentChanges()), EQUIVALENT_CHANGES, findings);
    check(rows(base.coverageOpen().stream()), COVERAGE_OPEN, findings);
    check(rows(base.conflicts().stream()), CONFLICTS, findings);
    check(rows(base.decisionTables().stream()), DECISION_TABLES, findings);
  }

  private static Stream<Row> rows(Stream<Table> tables) {
    return tables.flatMap(table -> table.rows().stream());
  }

  private static void check(Stream<Row> rows, List<String> columns, Findings findings) {
    rows.forEach(
        row ->
            columns.stream()
                .filter(column -> isEmpty(row, column))
                .forEach(column -> add(row, column, findings)));
  }

  /** A cell that is not there at all is told as a row that is too short. */
  private static boolean isEmpty(Row row, String column) {
    return row.cells().containsKey(column) && row.text(column).isEmpty();
  }

  private static void add(Row row, String column, Findings findings) {
    findings.add(
        LintKind.MISSING_CELL,
        row.cell(column).spot(),
        column + " is empty, so the row cannot be used",
        "state it; in this column an empty cell means nothing");
  }
}
