package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.Optional;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.table.LimitRow;
import org.brakerules.linter.internal.table.Term;

/** At most one row of a limit is for a part on any day under any rule set. */
final class LimitOverlapCheck implements Check {

  private static final List<String> SAME = List.of("applies-to", "rule-set", "from", "to");

  @Override
  public void check(RuleBase base, Findings findings) {
    LimitRow.byLimit(base.limits()).forEach(rows -> check(rows, findings));
  }

  private static void check(List<LimitRow> rows, Findings findings) {
    for (int i = 0; i < rows.size(); i++) {
      for (LimitRow earlier : rows.subList(0, i)) {
        LimitRow row = rows.get(i);
        if (row.overlaps(earlier) && !isToldAsRepeated(row.row(), earlier.row())) {
          findings.add(
              LintKind.LIMIT_OVERLAP,
              row.row().spot(),
              "one part can be in this row and in %s on the same day, and has two values of \"%s\""
                  .formatted(OtherLine.inWords(earlier.row(), row.row()), row.row().text("id")),
              remedy(row, earlier));
        }
      }
    }
  }

  private static boolean isToldAsRepeated(Row row, Row other) {
    return SAME.stream().allMatch(column -> row.text(column).equals(other.text(column)));
  }

  private static String remedy(LimitRow row, LimitRow earlier) {
    return row.continues(earlier)
        ? endOne(row, earlier)
        : demand(row.demandMissingHere(earlier), "this row")
            .or(
                () ->
                    demand(
                        earlier.demandMissingHere(row),
                        OtherLine.inWords(earlier.row(), row.row())))
            .orElse("let applies-to or rule-set of the two rows name nothing in common");
  }

  /** The row that began first ends the day before the other begins. */
  private static String endOne(LimitRow row, LimitRow earlier) {
    LimitRow first = row.period().from().isBefore(earlier.period().from()) ? row : earlier;
    LimitRow second = first == row ? earlier : row;
    return first.period().from().isBefore(second.period().from())
        ? "write %s into to of %s"
            .formatted(
                second.period().from().minusDays(1), OtherLine.inWords(first.row(), row.row()))
        : "end one of them with to, and begin the other the day after with from";
  }

  private static Optional<String> demand(Optional<Term> missing, String where) {
    return missing
        .filter(term -> !term.negated())
        .map(
            term ->
                "write %s=not %s into applies-to of %s"
                    .formatted(term.attribute(), String.join("|", term.values()), where));
  }
}
