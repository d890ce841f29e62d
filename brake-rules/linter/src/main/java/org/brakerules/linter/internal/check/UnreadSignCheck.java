package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleBaseReader;
import org.brakerules.linter.internal.check.Unread.SignOf;
import org.brakerules.linter.internal.text.Spot;

/** A sign that a job can state and no rule looks at is stated for nothing. */
final class UnreadSignCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    Unread.toTell(base, Unread::signs).values().forEach(sign -> add(sign, findings));
  }

  private static void add(SignOf sign, Findings findings) {
    String kind = sign.kind().id();
    findings.add(
        LintKind.UNREAD_SIGN,
        new Spot("%s/%s/%s.drl".formatted(RuleBaseReader.RULES, kind, kind), 1, 1),
        "no rule looks at "
            + sign.property()
            + " of the "
            + sign.kind().inWords()
            + ", so a part that shows it passes",
        "write a rule that reads it and the point \""
            + sign.id()
            + "\", or put that into unread.csv with the reason");
  }
}
