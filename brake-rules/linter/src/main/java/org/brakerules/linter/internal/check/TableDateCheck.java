package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Cell;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.table.Period;

/** A date is a day, and a limit does not end before it begins. */
final class TableDateCheck implements Check {

  private static final String FROM = "from";
  private static final String TO = "to";

  @Override
  public void check(RuleBase base, Findings findings) {
    base.limits().forEach(row -> checkLimit(row, findings));
    base.ruleSetRows()
        .map(row -> row.cell("automatic-adjusters-from"))
        .forEach(cell -> checkDate(cell, findings));
  }

  private static void checkLimit(Row row, Findings findings) {
    checkDate(row.cell(FROM), findings);
    checkDate(row.cell(TO), findings);
    Period.read(row.text(FROM), row.text(TO))
        .filter(Period::isBackwards)
        .ifPresent(
            period ->
                add(
                    row.cell(TO),
                    "the limit begins on %s and ends before, on %s, so it never holds"
                        .formatted(period.from(), period.to()),
                    "write a last day from " + period.from() + " on, or leave it empty",
                    findings));
  }

  private static void checkDate(Cell cell, Findings findings) {
    if (!cell.text().isEmpty() && Period.date(cell.text()).isEmpty()) {
      add(
          cell,
          "\"" + cell.text() + "\" is no day of the calendar, so the table cannot be used",
          "write year, month and day, such as 2026-11-20",
          findings);
    }
  }

  private static void add(Cell cell, String message, String remedy, Findings findings) {
    findings.add(LintKind.TABLE_DATE, cell.spot(), message, remedy);
  }
}
