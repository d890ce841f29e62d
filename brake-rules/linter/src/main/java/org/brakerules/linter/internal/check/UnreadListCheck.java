package org.brakerules.linter.internal.check;

import java.util.HashSet;
import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;

/** The list of what may stay unread holds nothing else. */
final class UnreadListCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    Unread unread = new Unread(base);
    Set<String> needed = new HashSet<>(unread.points().keySet());
    needed.addAll(unread.parts().keySet());
    needed.addAll(unread.signs().keySet());
    Set<String> seen = new HashSet<>();
    for (Row row : base.unreadRows()) {
      String id = row.text("id");
      if (!unread.everyId().contains(id)) {
        add(
            row,
            "\"" + id + "\" is no inspection point, kind of part or sign",
            Remedy.known(id, needed, "take the row out"),
            findings);
      } else if (!needed.contains(id)) {
        add(row, "\"" + id + "\" is read, so it needs no exception", "take the row out", findings);
      } else if (!seen.add(id)) {
        add(row, "\"" + id + "\" is there twice", "take one row out", findings);
      }
    }
  }

  private static void add(Row row, String message, String remedy, Findings findings) {
    findings.add(LintKind.NEEDLESS_EXCEPTION, row.cell("id").spot(), message, remedy);
  }
}
