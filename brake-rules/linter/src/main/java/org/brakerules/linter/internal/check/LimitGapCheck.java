package org.brakerules.linter.internal.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.table.LimitRow;

/** Where one row of a limit ends and a later one begins, no day is left between. */
final class LimitGapCheck implements Check {

  private static final Comparator<LimitRow> BY_FIRST_DAY =
      Comparator.comparing((LimitRow row) -> row.period().from());

  @Override
  public void check(RuleBase base, Findings findings) {
    for (List<LimitRow> rows : LimitRow.byLimit(base.limits())) {
      rows.forEach(row -> next(row, rows).ifPresent(next -> check(row, next, findings)));
    }
  }

  private static Optional<LimitRow> next(LimitRow row, List<LimitRow> rows) {
    return rows.stream()
        .filter(other -> other.continues(row))
        .filter(other -> other.period().from().isAfter(row.period().from()))
        .min(BY_FIRST_DAY);
  }

  private static void check(LimitRow row, LimitRow next, Findings findings) {
    if (row.period().leavesGapBefore(next.period())) {
      findings.add(
          LintKind.LIMIT_GAP,
          next.row().cell("from").spot(),
          "between the last day of line %d, %s, and this first day no value holds, and parts stay undecided"
              .formatted(row.row().spot().line(), row.period().to()),
          "write " + row.period().to().plusDays(1));
    }
  }
}
