package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;

/** What nobody reads need not be looked at. */
final class UnreadPointCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    Unread.toTell(base, Unread::points)
        .forEach(
            (id, row) ->
                findings.add(
                    LintKind.UNREAD_POINT,
                    row.cell("id").spot(),
                    "no rule and no limit reads \"" + id + "\", so it is looked at for nothing",
                    "write a rule that reads it, take the point out, or put it into unread.csv"
                        + " with the reason"));
  }
}
