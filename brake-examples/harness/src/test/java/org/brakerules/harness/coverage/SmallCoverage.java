package org.brakerules.harness.coverage;

import java.util.List;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.coverage.ClauseCoverage;
import org.brakerules.trial.coverage.ConditionCoverage;
import org.brakerules.trial.coverage.Coverage;
import org.brakerules.trial.coverage.LimitCoverage;
import org.brakerules.trial.coverage.ListedItem;
import org.brakerules.trial.coverage.PointCoverage;
import org.brakerules.trial.coverage.RuleCoverage;
import org.brakerules.trial.coverage.Side;
import org.brakerules.trial.coverage.SideCoverage;
import org.brakerules.trial.coverage.SourceCoverage;

/** The coverage of a rule base of one hose rule and one hub limit. */
final class SmallCoverage {

  private static final CaseName LEAKS = new CaseName("hose", "A hose that <leaks>");
  private static final CaseName TIGHT = new CaseName("hose", "A tight hose");
  private static final CaseName FAR = new CaseName("hose", "A missing hose");
  private static final CaseName SOUND = new CaseName("hub", "A sound hub");

  private SmallCoverage() {}

  static CoverageReport whole(ListedItem... listed) {
    return CoverageReport.ofAll(coverage(List.of(listed)), List.of("hose", "hub"));
  }

  static CoverageReport hose() {
    return CoverageReport.of(coverage(List.of()), List.of("hose"));
  }

  /** Everything that is open, with a reason. */
  static ListedItem[] reasons() {
    return coverage(List.of()).open().stream()
        .map(item -> new ListedItem(item.what(), item.id(), "because"))
        .toArray(ListedItem[]::new);
  }

  private static Coverage coverage(List<ListedItem> listed) {
    return new Coverage(
        new RuleBaseVersion("0.1.0", "abc"),
        2,
        3,
        List.of(rule()),
        List.of(limit(), madeAlone()),
        List.of(
            new SourceCoverage(
                "MANUAL",
                "A manual",
                "government manual",
                List.of(
                    new ClauseCoverage("4-30", List.of("HOSE-010"), List.of(), List.of()),
                    new ClauseCoverage("4-31", List.of(), List.of("hub.play.max"), List.of()))),
            new SourceCoverage("UNUSED", "A book", "trade press", List.of())),
        List.of(
            new PointCoverage(
                "hose.leak", "hose", List.of("HOSE-010"), List.of(), List.of(), "always"),
            new PointCoverage("hub.crack", "hub", List.of(), List.of(), List.of(), "always")),
        listed);
  }

  private static RuleCoverage rule() {
    return new RuleCoverage(
        "HOSE-010",
        "hose",
        "Leaking hose",
        List.of(LEAKS),
        List.of(TIGHT, SOUND, SOUND, SOUND, SOUND, SOUND, SOUND),
        List.of(FAR),
        List.of(
            new ConditionCoverage(
                "HOSE-010 Hose( leak == Sign.SEEN )",
                "Hose( leak == Sign.SEEN )",
                List.of(LEAKS),
                List.of(),
                List.of())));
  }

  private static LimitCoverage madeAlone() {
    return new LimitCoverage(
        "hub.run-out.max",
        "hub",
        "at most 0.010 in",
        List.of(),
        List.of(new SideCoverage(Side.BEYOND, List.of(), 2)));
  }

  private static LimitCoverage limit() {
    return new LimitCoverage(
        "hub.play.max",
        "hub",
        "at most 0.020 in",
        List.of(SOUND),
        List.of(
            new SideCoverage(Side.INSIDE, List.of(SOUND), 2),
            new SideCoverage(Side.ON, List.of(), 1),
            new SideCoverage(Side.NO_READING, List.of(), 0)));
  }
}
