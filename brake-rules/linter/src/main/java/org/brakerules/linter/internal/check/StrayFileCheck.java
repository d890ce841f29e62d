package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.Spot;

/** The rule compiler reads every rule file it finds; only those of the folders are checked. */
final class StrayFileCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    for (String file : base.strayFiles()) {
      findings.add(
          LintKind.STRAY_FILE,
          new Spot(file, 1, 1),
          "rules may not stand here, yet they would be compiled",
          "move them to org/brakerules/rules/<component>/<component>.drl");
    }
  }
}
