package org.brakerules.linter.internal.check;

import java.util.Collection;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Cell;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.Table;

/** What the tables beside the rules name is there: rules, limits, points and sources. */
final class ListedIdCheck implements Check {

  /** What may stay open, by the first word of the column {@code what}, and whose id it has. */
  private static final Map<String, Function<RuleBase, Set<String>>> OPEN =
      Map.of(
          "rule", RuleBase::ruleIds,
          "condition", RuleBase::ruleIds,
          "limit", RuleBase::limitIds,
          "point", RuleBase::pointIds,
          "source", RuleBase::sourceIds);

  @Override
  public void check(RuleBase base, Findings findings) {
    Set<String> rulesAndLimits = new HashSet<>(base.ruleIds());
    rulesAndLimits.addAll(base.limitIds());
    Set<String> points = new HashSet<>(rulesAndLimits);
    points.addAll(base.pointIds());
    base.equivalentChanges()
        .flatMap(table -> table.soundRows().stream())
        .forEach(row -> check(row.cell("of"), "rule or limit", rulesAndLimits, findings));
    base.rulesOff().forEach(row -> check(row.cell("rule"), "rule", base.ruleIds(), findings));
    base.conflicts()
        .ifPresent(it -> all(it, "concerns", "rule or limit", rulesAndLimits, findings));
    base.decisionTables()
        .ifPresent(it -> all(it, "rules", "rule, limit or inspection point", points, findings));
    base.coverageOpen().ifPresent(it -> it.soundRows().forEach(row -> open(row, base, findings)));
  }

  private static void all(
      Table table, String column, String what, Collection<String> known, Findings findings) {
    table.soundRows().forEach(row -> check(row.cell(column), what, known, findings));
  }

  /** Checks every id of a cell; those of several are parted by semicolons. */
  private static void check(Cell cell, String what, Collection<String> known, Findings findings) {
    int start = 0;
    for (String part : cell.text().split(";", -1)) {
      String id = part.strip();
      if (!id.isEmpty() && !known.contains(id)) {
        add(cell, start + part.indexOf(id), id, what, known, findings);
      }
      start += part.length() + 1;
    }
  }

  /** A condition stands behind the id of its rule, the choice of a row behind that of its limit. */
  private static void open(Row row, RuleBase base, Findings findings) {
    String what = row.text("what").split("-", 2)[0];
    String id = row.text("id").split(" ", 2)[0];
    Set<String> known = OPEN.getOrDefault(what, any -> Set.of(id)).apply(base);
    if (!id.isEmpty() && !known.contains(id)) {
      add(row.cell("id"), 0, id, nameOf(what), known, findings);
    }
  }

  private static String nameOf(String what) {
    return switch (what) {
      case "condition" -> "rule";
      case "point" -> "inspection point";
      default -> what;
    };
  }

  private static void add(
      Cell cell, int start, String id, String what, Collection<String> known, Findings findings) {
    findings.add(
        LintKind.UNKNOWN_ID,
        cell.spotAt(start),
        "there is no " + what + " \"" + id + "\"",
        Remedy.known(id, known, "take it out, or write one that is there"));
  }
}
