package org.brakerules.harness.coverage;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.trial.coverage.ConditionCoverage;
import org.brakerules.trial.coverage.Coverage;
import org.brakerules.trial.coverage.PointCoverage;
import org.brakerules.trial.coverage.SideCoverage;

/**
 * How much of a rule base the cases show, as pairs of what is shown and what there is.
 *
 * @param name the component, or {@code all}
 * @param fired rules that a case fires
 * @param near rules that a case comes near
 * @param conditions conditions of which cases show both outcomes
 * @param sides sides of rows of limits
 * @param points inspection points that a rule or limit reads
 * @param open what is open and not listed
 */
record ComponentCounts(
    String name, Count fired, Count near, Count conditions, Count sides, Count points, int open) {

  /** The columns of a table of counts, behind that of the names. */
  static final List<String> COLUMNS =
      List.of("fired", "near miss", "conditions", "limit sides", "points read", "open");

  /**
   * Some of all.
   *
   * @param shown how many are shown
   * @param all how many there are
   */
  record Count(int shown, int all) {

    private static Count of(Stream<Boolean> shown) {
      List<Boolean> all = shown.toList();
      return new Count((int) all.stream().filter(one -> one).count(), all.size());
    }

    @Override
    public String toString() {
      return shown + " of " + all;
    }
  }

  static ComponentCounts of(String name, Coverage coverage) {
    return new ComponentCounts(
        name,
        Count.of(coverage.rules().stream().map(rule -> !rule.fires().isEmpty())),
        Count.of(coverage.rules().stream().map(rule -> !rule.near().isEmpty())),
        Count.of(
            coverage.rules().stream()
                .flatMap(rule -> rule.conditions().stream())
                .map(ConditionCoverage::isShown)),
        Count.of(
            coverage.limits().stream()
                .flatMap(limit -> limit.sides().stream())
                .map(SideCoverage::isShown)),
        Count.of(coverage.points().stream().map(PointCoverage::isRead)),
        coverage.open().size());
  }

  /** The cells of a row, behind that of the name. */
  List<String> cells() {
    return Stream.of(fired, near, conditions, sides, points, open).map(String::valueOf).toList();
  }
}
