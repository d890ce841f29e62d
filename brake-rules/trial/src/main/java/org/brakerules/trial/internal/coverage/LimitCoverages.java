package org.brakerules.trial.internal.coverage;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
    return tables.limits().rows().toList().parallelStream().map(coverages::of).toList();
  }

  private LimitCoverage of(LimitRow row) {
    String component = row.limit().part().id();
    List<OnCase> ofRow =
        cases.stream()
            .filter(one -> one.seen().stream().anyMatch(seen -> seen.row().equals(row)))
            .sorted(Comparator.comparing(one -> !one.name().component().equals(component)))
            .toList();
    List<List<Seen>> ofMade =
        made.getOrDefault(row.limit(), List.of()).stream()
            .map(job -> SidesOfJob.of(job, tables))
            .toList();
    Set<Side> sides = row.limit().written().isEmpty() ? EnumSet.allOf(Side.class) : WITH_VALUE;
    return new LimitCoverage(
        names.of(row),
        component,
        row.limit().inWords(),
        ofRow.stream().map(OnCase::name).toList(),
        sides.stream().map(side -> side(row, side, ofRow, ofMade)).toList());
  }

  private static SideCoverage side(
      LimitRow row, Side side, List<OnCase> ofRow, List<List<Seen>> ofMade) {
    List<CaseName> shownBy =
        ofRow.stream().filter(one -> shows(one.seen(), row, side)).map(OnCase::name).toList();
    long byMade = ofMade.stream().filter(seen -> shows(seen, row, side)).count();
    return new SideCoverage(side, shownBy, Math.toIntExact(byMade));
  }

  private static boolean shows(List<Seen> seen, LimitRow row, Side side) {
    return seen.stream()
        .anyMatch(one -> one.row().equals(row) && one.side().filter(side::equals).isPresent());
  }
}
