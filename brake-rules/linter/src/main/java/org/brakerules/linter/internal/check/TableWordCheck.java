package org.brakerules.linter.internal.check;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Cell;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.OpenWords;
import org.brakerules.linter.internal.language.Words;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Station;

/** Some columns take words of a fixed list only; another word stops the rule base from loading. */
final class TableWordCheck implements Check {

  /** A column with what its words are and all of them. */
  private record Column(String name, String what, Function<RuleBase, Collection<String>> words) {

    static Column of(String name, String what, Class<?> type) {
      return of(name, what, Words.all(type));
    }

    static Column of(String name, String what, List<String> words) {
      return new Column(name, what, base -> words);
    }
  }

  private static final Column PART = Column.of("part", "kind of part", PartKind.class);
  private static final Column RULE_SET =
      new Column("rule-set", "rule set of rule-sets.csv", base -> base.ruleSets().column("id"));

  private static final List<String> COMPARISONS =
      Stream.of(Comparison.values()).map(Comparison::inWords).toList();
  private static final Column COMPARISON = Column.of("comparison", "comparison", COMPARISONS);

  private static final List<Column> LIMITS =
      List.of(
          PART,
          COMPARISON,
          Column.of("station", "station", Station.class),
          Column.of("methods", "way of measuring", Method.class),
          Column.of("moment", "moment of a reading", Moment.class),
          RULE_SET);

  private static final List<Column> POINTS =
      List.of(
          PART,
          Column.of("at", "station", Station.class),
          Column.of("needed-from", "scope", Scope.class),
          Column.of("needed", "answer to when it is needed", Point.NEEDED),
          Column.of("brake", "state of the brake", Point.BRAKE),
          Column.of("finds", "answer to what it finds", Point.FINDS));

  private static final List<Column> CAUTIONS = List.of(Column.of("from", "scope", Scope.class));

  private static final List<Column> SOURCES =
      List.of(Column.of("standing", "standing of a source", Standing.class), RULE_SET);

  private static final List<Column> COVERAGE_OPEN =
      List.of(Column.of("what", "kind of thing that can be open", OpenWords.ALL));

  /** Whether a limit can compare in this way. */
  static boolean isComparison(String word) {
    return COMPARISONS.contains(word);
  }

  @Override
  public void check(RuleBase base, Findings findings) {
    check(base.limits(), LIMITS, base, findings);
    check(base.comparisons(), List.of(COMPARISON), base, findings);
    check(base.points(), POINTS, base, findings);
    check(base.cautions().rows().stream(), CAUTIONS, base, findings);
    check(base.sources().rows().stream(), SOURCES, base, findings);
    base.coverageOpen()
        .ifPresent(table -> check(table.rows().stream(), COVERAGE_OPEN, base, findings));
  }

  private static void check(
      Stream<Row> rows, List<Column> columns, RuleBase base, Findings findings) {
    rows.forEach(row -> columns.forEach(one -> check(row.cell(one.name()), one, base, findings)));
  }

  private static void check(Cell cell, Column column, RuleBase base, Findings findings) {
    int start = 0;
    for (String part : cell.text().split(";", -1)) {
      String word = part.strip();
      if (!cell.text().isEmpty() && !column.words().apply(base).contains(word)) {
        findings.add(
            LintKind.UNKNOWN_WORD,
            cell.spotAt(start + part.indexOf(word)),
            "\"" + word + "\" is no " + column.what() + ", so the table cannot be used",
            remedy(word, column, column.words().apply(base)));
      }
      start += part.length() + 1;
    }
  }

  /** Comparisons look alike and mean opposites: "no more than" is not "more than". */
  private static String remedy(String word, Column column, Collection<String> words) {
    String all = Remedy.oneOf(words);
    return column.equals(COMPARISON) ? all : Remedy.known(word, words, all);
  }
}
