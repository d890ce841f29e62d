package org.brakerules.linter.internal.check;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.model.decision.Comparison;

/** A rule set holds a limit of every rule set on another side of the same figure, once. */
final class ComparisonRowCheck implements Check {

  private static final String LIMIT = "limit";
  private static final String COMPARISON = "comparison";

  @Override
  public void check(RuleBase base, Findings findings) {
    base.ruleSetFolders()
        .forEach(
            folder -> {
              Set<String> seen = new HashSet<>();
              folder.comparisonRows().forEach(row -> check(row, base, seen, findings));
            });
  }

  private static void check(Row row, RuleBase base, Set<String> seen, Findings findings) {
    String limit = row.text(LIMIT);
    if (limit.isEmpty()) {
      return; // told as an empty cell
    }
    if (!seen.add(limit)) {
      findings.add(
          LintKind.TABLE_ID,
          row.cell(LIMIT).spot(),
          "\"" + limit + "\" is there twice for one rule set",
          "take one out");
    }
    Set<String> ofAll =
        ofAll(base).map(one -> one.text("id")).collect(Collectors.toUnmodifiableSet());
    if (!ofAll.contains(limit)) {
      findings.add(
          LintKind.UNKNOWN_ID,
          row.cell(LIMIT).spot(),
          base.limitIds().contains(limit)
              ? "every row of \"" + limit + "\" belongs to one rule set, so there is none to hold"
              : "there is no limit \"" + limit + "\"",
          Remedy.known(limit, ofAll, "name a limit with rows that hold in every rule set"));
      return;
    }
    ofAll(base)
        .filter(one -> one.text("id").equals(limit))
        .findFirst()
        .ifPresent(one -> checkSide(row, one, findings));
  }

  private static Stream<Row> ofAll(RuleBase base) {
    return base.limits().filter(row -> row.text("rule-set").isEmpty());
  }

  private static void checkSide(Row row, Row limit, Findings findings) {
    Optional<Comparison> here = comparison(row);
    Optional<Comparison> there = comparison(limit);
    if (here.isPresent() && there.isPresent() && here.get().isUpper() != there.get().isUpper()) {
      findings.add(
          LintKind.UNKNOWN_WORD,
          row.cell(COMPARISON).spot(),
          "\"%s\" passes \"%s\", and \"%s\" would pass what fails everywhere else"
              .formatted(row.text(LIMIT), there.get().inWords(), here.get().inWords()),
          there.get().isUpper()
              ? "write \"at most\" or \"less than\""
              : "write \"at least\" or \"more than\"");
    }
  }

  private static Optional<Comparison> comparison(Row row) {
    return Stream.of(Comparison.values())
        .filter(one -> one.inWords().equals(row.text(COMPARISON)))
        .findFirst();
  }
}
