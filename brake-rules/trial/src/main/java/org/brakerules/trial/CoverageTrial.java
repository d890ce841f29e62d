package org.brakerules.trial;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.internal.RuleBase;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.limit.Limit;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.coverage.Coverage;
import org.brakerules.trial.coverage.ListedItem;
import org.brakerules.trial.coverage.OpenItem;
import org.brakerules.trial.coverage.PointCoverage;
import org.brakerules.trial.internal.coverage.BenchedCase;
import org.brakerules.trial.internal.coverage.LimitCoverages;
import org.brakerules.trial.internal.coverage.PointCoverages;
import org.brakerules.trial.internal.coverage.RuleCoverages;
import org.brakerules.trial.internal.coverage.SourceCoverages;

/**
 * Runs cases and finds out what they show: which rules fire and come near, which conditions decide,
 * which sides of limits are seen. What they do not show is open.
 */
public final class CoverageTrial {

  private static final String LISTED = "coverage-open.csv";
  private static final String UNREAD = "unread.csv";

  private CoverageTrial() {}

  /**
   * Runs cases against a rule base that the linter finds nothing wrong with.
   *
   * @param resources the folder with {@code org/brakerules/rules} in it
   * @param cases its cases, all of which come out as expected
   * @param made jobs that the program made for rows of limits; each counts for its row alone
   * @throws IOException if there is no rule base, or it, its {@code coverage-open.csv} or its
   *     {@code unread.csv} cannot be read
   */
  public static Coverage of(
      Path resources, Collection<? extends TrialCase> cases, Map<Limit, List<BrakeJob>> made)
      throws IOException {
    RuleBaseFiles files = RuleBaseFiles.in(resources.resolve(TrialRules.RULES));
    List<WrittenRule> written = TrialRules.rules(resources);
    RuleBase base = TrialRules.with(resources, written, List.of()).base();
    List<RuleText> texts = base.engine().rules();
    List<BenchedCase> benched = cases.parallelStream().map(one -> benched(one, base)).toList();
    List<PointCoverage> points = PointCoverages.of(base.tables(), texts, written);
    return new Coverage(
        base.version(),
        cases.size(),
        made.values().stream().mapToInt(List::size).sum(),
        RuleCoverages.of(written, benched),
        LimitCoverages.of(base.tables(), benched, made),
        SourceCoverages.of(base.tables(), texts, files),
        points,
        listed(files, points));
  }

  private static BenchedCase benched(TrialCase one, RuleBase base) {
    CaseName name = new CaseName(one.component(), one.name());
    return BenchedCase.of(name, one.job(), one.rules(), base);
  }

  private static List<ListedItem> listed(RuleBaseFiles files, List<PointCoverage> points)
      throws IOException {
    try {
      return Stream.concat(listed(files), unread(files, points)).toList();
    } catch (RuleBaseException mistake) {
      throw new IOException(mistake.getMessage(), mistake);
    }
  }

  private static Stream<ListedItem> listed(RuleBaseFiles files) {
    return rows(files, LISTED)
        .map(
            row ->
                new ListedItem(row.required("what"), row.required("id"), row.required("reason")));
  }

  /** Points that nobody reads have their reasons in one place, which the linter keeps tidy. */
  private static Stream<ListedItem> unread(RuleBaseFiles files, List<PointCoverage> points) {
    Set<String> open =
        points.stream()
            .filter(point -> !point.isRead())
            .map(PointCoverage::id)
            .collect(Collectors.toUnmodifiableSet());
    return rows(files, UNREAD)
        .filter(row -> open.contains(row.required("id")))
        .map(row -> new ListedItem(OpenItem.POINT, row.required("id"), row.required("reason")));
  }

  private static Stream<Row> rows(RuleBaseFiles files, String file) {
    return files.open(file).map(in -> CsvTable.read(file, in)).orElse(List.of()).stream();
  }
}
