package org.brakerules.harness.coverage;

import java.util.List;
import org.brakerules.harness.Counted;
import org.brakerules.harness.report.Page;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.coverage.ClauseCoverage;
import org.brakerules.trial.coverage.Coverage;
import org.brakerules.trial.coverage.LimitCoverage;
import org.brakerules.trial.coverage.PointCoverage;
import org.brakerules.trial.coverage.RuleCoverage;
import org.brakerules.trial.coverage.SourceCoverage;

/** Every rule, limit, inspection point and source of a coverage, one after the other. */
final class CoverageDetail {

  private static final int INDENT = 2;
  private static final int LABEL = 14;

  /** So many near misses are enough to find the rest. */
  private static final int NEAR = 5;

  private final Coverage coverage;
  private final Page page;

  CoverageDetail(Coverage coverage, Page page) {
    this.coverage = coverage;
    this.page = page;
  }

  void write() {
    coverage.rules().forEach(this::rule);
    coverage.limits().forEach(this::limit);
    coverage.points().forEach(this::point);
    coverage.sources().forEach(this::source);
  }

  private void rule(RuleCoverage rule) {
    heading("Rule " + rule.id() + " " + rule.title());
    cases("fires in", rule.fires(), rule.fires().size());
    cases("near in", rule.near(), NEAR);
    if (!rule.saidNear().isEmpty()) {
      cases("only says so", rule.saidNear(), rule.saidNear().size());
    }
    rule.conditions()
        .forEach(
            condition -> {
              page.paragraph(INDENT, condition.text());
              line("  holds in", CoverageReport.shownBy(condition.holds()));
              line("  fails in", CoverageReport.failsIn(condition));
            });
  }

  private void limit(LimitCoverage limit) {
    heading("Limit " + limit.id() + ": " + limit.passes());
    line("applies in", CoverageReport.shownBy(limit.applies()));
    limit.sides().forEach(side -> line(side.side().inWords(), CoverageReport.shownBy(side)));
  }

  private void point(PointCoverage point) {
    heading("Inspection point " + point.id());
    line("needed", point.needed());
    names("rules", point.rules());
    names("limits", point.limits());
    names("asked for by", point.askedBy());
  }

  private void source(SourceCoverage source) {
    heading("Source " + source.id() + ", " + source.title());
    for (ClauseCoverage clause : source.clauses()) {
      page.paragraph(INDENT, clause.clause().isEmpty() ? "as a whole" : clause.clause());
      names("  rules", clause.rules());
      names("  limits", clause.limits());
    }
  }

  private void cases(String label, List<CaseName> cases, int most) {
    line(label, cases.isEmpty() ? "no case" : Counted.of(cases.size(), "case"));
    cases.stream().limit(most).forEach(name -> line("", name.toString()));
    if (cases.size() > most) {
      line("", "and %d more".formatted(cases.size() - most));
    }
  }

  private void heading(String words) {
    page.gap();
    page.paragraph(0, words);
  }

  private void names(String label, List<String> names) {
    if (!names.isEmpty()) {
      line(label, String.join(", ", names));
    }
  }

  private void line(String label, String words) {
    page.labelled(INDENT, label, LABEL, words);
  }
}
