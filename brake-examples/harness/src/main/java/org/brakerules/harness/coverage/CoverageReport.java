package org.brakerules.harness.coverage;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.harness.Counted;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.coverage.ConditionCoverage;
import org.brakerules.trial.coverage.Coverage;
import org.brakerules.trial.coverage.ListedItem;
import org.brakerules.trial.coverage.SideCoverage;

/**
 * A coverage with what its reports share.
 *
 * @param coverage what the cases show
 * @param components the components it is of, in order
 * @param whole whether it is of the whole rule base
 */
public record CoverageReport(Coverage coverage, List<String> components, boolean whole) {

  /** Keeps its own copy of the components. */
  public CoverageReport {
    components = List.copyOf(components);
  }

  /** The report of a whole rule base. */
  public static CoverageReport ofAll(Coverage coverage, List<String> components) {
    return new CoverageReport(coverage, components, true);
  }

  /** The report of some of its components. */
  public static CoverageReport of(Coverage coverage, List<String> chosen) {
    return new CoverageReport(coverage.of(chosen), chosen, false);
  }

  /** Whether anything is open that is not listed, or listed that is not open. */
  public boolean hasOpen() {
    return !coverage.open().isEmpty() || !notNeeded().isEmpty();
  }

  /** Rows of other components are no business of a report of one. */
  List<ListedItem> notNeeded() {
    return whole ? coverage.notNeeded() : List.of();
  }

  private Stream<ComponentCounts> counts() {
    return components.stream()
        .map(component -> ComponentCounts.of(component, coverage.of(List.of(component))));
  }

  /** The counts, and those of all where there are several. */
  List<ComponentCounts> countsAndTotal() {
    Stream<ComponentCounts> total =
        components.size() == 1 ? Stream.of() : Stream.of(ComponentCounts.of("all", coverage));
    return Stream.concat(counts(), total).toList();
  }

  /** What was run, and what counts for what. */
  String howShown() {
    return ("%s, %s, %s and %s, shown by %s. Rules and their conditions are shown by the cases"
            + " beside the rules alone. Limits are also shown by %s that the program makes, each"
            + " for one row: without a reading, and with readings just below, at and just above its"
            + " value in every unit of its kind.")
        .formatted(
            Counted.of(coverage.rules().size(), "rule"),
            Counted.of(coverage.limits().size(), "row") + " of limits",
            Counted.of(coverage.points().size(), "inspection point"),
            Counted.of(coverage.sources().size(), "source"),
            Counted.of(coverage.cases(), "case"),
            Counted.of(coverage.made(), "job"));
  }

  /** How many cases, and the first of them. */
  static String shownBy(List<CaseName> cases) {
    return cases.isEmpty()
        ? "no case"
        : Counted.of(cases.size(), "case")
            + ", "
            + (cases.size() > 1 ? "such as " : "")
            + quoted(cases.get(0));
  }

  /** Where a condition fails, and whether only for one of several parts. */
  static String failsIn(ConditionCoverage condition) {
    return condition.fails().isEmpty() && condition.isSeenToFail()
        ? shownBy(condition.failsBeside())
            + ", for one part; for another, as at the other end of the axle, it holds"
        : shownBy(condition.fails());
  }

  /** What shows a side of a limit, with the readings made by the program. */
  static String shownBy(SideCoverage side) {
    String made = side.made() > 0 ? Counted.of(side.made(), "made job") : "";
    if (side.cases().isEmpty()) {
      return made.isEmpty() ? "no case" : made + ", no case";
    }
    return (made.isEmpty() ? "" : made + ", ") + shownBy(side.cases());
  }

  private static String quoted(CaseName name) {
    return "\"" + name.name() + "\" (" + name.component() + ")";
  }
}
