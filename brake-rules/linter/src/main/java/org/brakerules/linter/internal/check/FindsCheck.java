package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.ModelProperty;
import org.brakerules.model.part.PartKind;

/** A sign is a fault or something good; a measurement or a statement is neither. */
final class FindsCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    base.points().filter(TablePropertyCheck::isKnown).forEach(row -> check(row, findings));
  }

  private static void check(Row row, Findings findings) {
    boolean sign =
        PartKind.byId(row.text("part"))
            .flatMap(kind -> ModelProperty.find(kind, row.text("property")))
            .filter(ModelProperty::isSign)
            .isPresent();
    String finds = row.text("finds");
    if (Point.FINDS.contains(finds) && sign == finds.equals(Point.FACT)) {
      findings.add(
          LintKind.WRONG_FINDS,
          row.cell("finds").spot(),
          row.text("property")
              + (sign
                  ? " is a sign, and a sign that is seen says something of the part"
                  : " is no sign, so it is neither a fault nor good"),
          sign
              ? "write \"fault\", or \"good\" for a sign that speaks for the part"
              : "write \"fact\"");
    }
  }
}
