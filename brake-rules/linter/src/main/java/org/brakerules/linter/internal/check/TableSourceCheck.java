package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Cell;
import org.brakerules.linter.internal.base.RuleBase;

/** Every source a table cites is in the table of sources; a limit cites one. */
final class TableSourceCheck implements Check {

  private static final List<String> OF_RULE_SET =
      List.of("test-pressure-source", "automatic-adjusters-source");

  @Override
  public void check(RuleBase base, Findings findings) {
    Stream.of(base.limits(), base.comparisons(), base.rulesOff(), base.cautions().rows().stream())
        .flatMap(rows -> rows)
        .map(row -> row.cell("source"))
        .forEach(cell -> check(cell, base, findings));
    Stream.of(base.limits(), base.comparisons(), base.rulesOff())
        .flatMap(rows -> rows)
        .map(row -> row.cell("source"))
        .forEach(cell -> checkSingle(cell, findings));
    base.ruleSetRows()
        .flatMap(row -> OF_RULE_SET.stream().map(row::cell))
        .filter(cell -> !cell.text().isEmpty())
        .forEach(cell -> check(cell, base, findings));
    base.conflicts().stream()
        .flatMap(table -> table.soundRows().stream())
        .flatMap(row -> Stream.of(row.cell("source-a"), row.cell("source-b")))
        .filter(cell -> !cell.text().isEmpty())
        .forEach(cell -> check(cell, base, findings));
  }

  private static void checkSingle(Cell cell, Findings findings) {
    if (cell.text().contains(";")) {
      findings.add(
          LintKind.TABLE_FORM,
          cell.spot(),
          "the limit has more than one source",
          "name the one its value comes from; put the others into the note");
    }
  }

  private static void check(Cell cell, RuleBase base, Findings findings) {
    for (Citation citation : Citation.all(cell.text())) {
      if (!citation.isKnown(base)) {
        findings.add(
            LintKind.UNKNOWN_SOURCE,
            cell.spotAt(citation.start()),
            citation.fault(),
            citation.remedy(base));
      }
    }
  }
}
