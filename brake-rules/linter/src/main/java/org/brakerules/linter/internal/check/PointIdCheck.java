package org.brakerules.linter.internal.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Component;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.Table;
import org.brakerules.linter.internal.language.Words;

/** The id of an inspection point is its folder and its property, and is there once. */
final class PointIdCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    Set<String> seen = new HashSet<>();
    for (Component component : base.components()) {
      for (Row row : component.points().map(Table::rows).orElse(List.of())) {
        String id = row.text("id");
        String expected = component.name() + "." + Words.ofProperty(row.text("property"));
        if (!id.equals(expected) && TablePropertyCheck.isKnown(row)) {
          add(
              row,
              "\"" + id + "\" does not name its folder and property",
              "write \"" + expected + "\"",
              findings);
        }
        if (!seen.add(id)) {
          add(row, "\"" + id + "\" is there twice", "keep one row for each property", findings);
        }
      }
    }
  }

  private static void add(Row row, String message, String remedy, Findings findings) {
    findings.add(LintKind.TABLE_ID, row.cell("id").spot(), message, remedy);
  }
}
