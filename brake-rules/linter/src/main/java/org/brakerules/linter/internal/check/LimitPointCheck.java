package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;

/** A limit that no inspection point asks a reading for can never be held against anything. */
final class LimitPointCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    Set<List<String>> asked =
        base.points().map(LimitPointCheck::measured).collect(Collectors.toUnmodifiableSet());
    base.limits()
        .filter(TablePropertyCheck::isKnown)
        .filter(row -> !asked.contains(measured(row)))
        .forEach(
            row ->
                findings.add(
                    LintKind.LIMIT_WITHOUT_POINT,
                    row.cell("property").spot(),
                    "no inspection point asks for "
                        + row.text("property")
                        + " of "
                        + row.text("part"),
                    "add the point to " + row.text("part") + ".points.csv"));
  }

  private static List<String> measured(Row row) {
    return List.of(row.text("part"), row.text("property"));
  }
}
