package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;

/** Every table is there and every row has the columns of its table. */
final class TableFormCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    base.tables()
        .flatMap(table -> table.mistakes().stream())
        .forEach(mistake -> findings.add(LintKind.TABLE_FORM, mistake, ""));
  }
}
