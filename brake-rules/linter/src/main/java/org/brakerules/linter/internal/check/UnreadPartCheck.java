package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleBaseReader;
import org.brakerules.linter.internal.text.Spot;
import org.brakerules.model.part.PartKind;

/** A part that no rule looks at is never found bad. */
final class UnreadPartCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    Unread.toTell(base, Unread::parts).values().forEach(kind -> add(kind, findings));
  }

  private static void add(PartKind kind, Findings findings) {
    String file = "%s/%s/%s.drl".formatted(RuleBaseReader.RULES, kind.id(), kind.id());
    findings.add(
        LintKind.UNREAD_PART,
        new Spot(file, 1, 1),
        "no rule looks at the " + kind.inWords() + ", so it is never found bad",
        "write a rule of "
            + kind.recordType().getSimpleName()
            + ", or put \""
            + kind.id()
            + "\" into unread.csv with the reason");
  }
}
