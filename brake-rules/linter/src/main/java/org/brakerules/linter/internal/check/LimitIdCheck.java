package org.brakerules.linter.internal.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Component;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.Table;
import org.brakerules.model.part.PartKind;

/**
 * The id of a limit begins with its folder. Rows that share an id are one limit for other parts,
 * dates or rule sets: they limit one property on one side, and no two are for the same.
 */
final class LimitIdCheck implements Check {

  /** What the rows of one limit share, each with what makes a cell worth comparing. */
  private static final Map<String, Predicate<Row>> ONE_LIMIT =
      Map.of(
          "part", row -> PartKind.byId(row.text("part")).isPresent(),
          "property", row -> TablePropertyCheck.measurement(row).isPresent(),
          "comparison", row -> TableWordCheck.isComparison(row.text("comparison")));

  private static final List<String> SELECTOR =
      List.of("id", "applies-to", "rule-set", "from", "to");

  @Override
  public void check(RuleBase base, Findings findings) {
    Map<List<String>, Row> first = new HashMap<>();
    Set<List<String>> selectors = new HashSet<>();
    for (Component component : base.components()) {
      for (Row row : component.limits().map(Table::rows).orElse(List.of())) {
        checkStart("the folder " + component.name(), component.name(), row, findings);
        check(row, first, selectors, findings);
      }
    }
    base.limitsOfRuleSets()
        .forEach(
            row -> {
              checkStart("a row of the " + row.text("part"), row.text("part"), row, findings);
              check(row, first, selectors, findings);
            });
  }

  private static void check(
      Row row, Map<List<String>, Row> first, Set<List<String>> selectors, Findings findings) {
    checkSame(row, first, findings);
    if (!selectors.add(SELECTOR.stream().map(row::text).toList())) {
      add(
          row,
          "\"" + row.text("id") + "\" is there twice for the same parts, rule set and dates",
          "tell the rows apart by applies-to, rule-set, from or to, or take one out",
          findings);
    }
  }

  private static void checkStart(String where, String folder, Row row, Findings findings) {
    if (!row.text("id").startsWith(folder + ".")) {
      add(
          row,
          "the limit \"" + row.text("id") + "\" stands in " + where,
          "begin its id with \"" + folder + ".\", or move it to its own folder",
          findings);
    }
  }

  /** A cell that says nothing known is told by itself, and no other is held against it. */
  private static void checkSame(Row row, Map<List<String>, Row> first, Findings findings) {
    ONE_LIMIT.forEach(
        (column, isKnown) -> {
          if (isKnown.test(row)) {
            Row other = first.computeIfAbsent(List.of(row.text("id"), column), unseen -> row);
            checkSame(row, other, column, findings);
          }
        });
  }

  private static void checkSame(Row row, Row other, String column, Findings findings) {
    if (!row.text(column).equals(other.text(column))) {
      findings.add(
          LintKind.TABLE_ID,
          row.cell(column).spot(),
          "\"%s\" has %s \"%s\" here and \"%s\" in %s"
              .formatted(
                  row.text("id"),
                  column,
                  row.text(column),
                  other.text(column),
                  OtherLine.inWords(other, row)),
          "give another limit another id");
    }
  }

  private static void add(Row row, String message, String remedy, Findings findings) {
    findings.add(LintKind.TABLE_ID, row.cell("id").spot(), message, remedy);
  }
}
