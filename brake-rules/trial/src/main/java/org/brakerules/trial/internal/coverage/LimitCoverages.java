package org.brakerules.trial.internal.coverage;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.coverage.LimitCoverage;
import org.brakerules.trial.coverage.Side;
import org.brakerules.trial.coverage.SideCoverage;
import org.brakerules.trial.internal.coverage.SidesOfJob.Seen;

/** What cases, and jobs made by the program, show of the rows of limits. */
public final class LimitCoverages {

  private static final Set<Side> WITH_VALUE = EnumSet.complementOf(EnumSet.of(Side.NO_FIGURE));

  private record OnCase(CaseName name, List<Seen> seen) {}

  private final Tables tables;
  private final RowNames names;
  private final List<OnCase> cases;
  private final Map<Limit, List<BrakeJob>> made;

  private LimitCoverages(Tables tables, List<BenchedCase> cases, Map<Limit, List<BrakeJob>> made) {
    this.tables = tables;
    this.names = new RowNames(tables.limits());
    this.cases =
        cases.parallelStream()
            .map(one -> new OnCase(one.name(), SidesOfJob.of(one.job(), tables)))
            .toList();
    this.made = made;
  }

  /**
   * What is shown of each row, in the order of the tables.
   *
   * @param made the jobs that the program made for each row
   */
  public static List<LimitCoverage> of(
      Tables tables, List<BenchedCase> cases, Map<Limit, List<BrakeJob>> made) {
    LimitCoverages coverages = new LimitCoverages(tables, cases, made);
    return coverages.groups().parallelStream().map(coverages::of).toList();
  }

  /** Each row for itself; those that one row of comparisons made prove that row together. */
  private Collection<List<LimitRow>> groups() {
    return tables
        .limits()
        .rows()
        .collect(Collectors.groupingBy(names::of, LinkedHashMap::new, Collectors.toList()))
        .values();
  }

  private LimitCoverage of(List<LimitRow> rows) {
    LimitRow row = rows.get(0);
    String component = row.limit().part().id();
    List<OnCase> ofRow =
        cases.stream()
            .filter(one -> one.seen().stream().anyMatch(seen -> rows.contains(seen.row())))
            .sorted(Comparator.comparing(one -> !one.name().component().equals(component)))
            .toList();
    List<List<Seen>> ofMade =
        rows.stream()
            .flatMap(one -> made.getOrDefault(one.limit(), List.of()).stream())
            .map(job -> SidesOfJob.of(job, tables))
            .toList();
    Set<Side> sides = row.limit().written().isEmpty() ? EnumSet.allOf(Side.class) : WITH_VALUE;
    return new LimitCoverage(
        names.of(row),
        component,
        passes(row),
        ofRow.stream().map(OnCase::name).toList(),
        sides.stream().map(side -> side(rows, side, ofRow, ofMade)).toList());
  }

  private static String passes(LimitRow row) {
    return row.byComparison()
        ? row.limit().comparison().inWords() + " the figure of its row"
        : row.limit().inWords();
  }

  private static SideCoverage side(
      List<LimitRow> rows, Side side, List<OnCase> ofRow, List<List<Seen>> ofMade) {
    List<CaseName> shownBy =
        ofRow.stream().filter(one -> shows(one.seen(), rows, side)).map(OnCase::name).toList();
    long byMade = ofMade.stream().filter(seen -> shows(seen, rows, side)).count();
    return new SideCoverage(side, shownBy, Math.toIntExact(byMade));
  }

  private static boolean shows(List<Seen> seen, List<LimitRow> rows, Side side) {
    return seen.stream()
        .anyMatch(one -> rows.contains(one.row()) && one.side().filter(side::equals).isPresent());
  }
}
