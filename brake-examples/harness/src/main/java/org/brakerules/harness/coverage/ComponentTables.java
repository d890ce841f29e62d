package org.brakerules.harness.coverage;

import java.util.List;
import org.brakerules.harness.html.Markup;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.coverage.ConditionCoverage;
import org.brakerules.trial.coverage.Coverage;
import org.brakerules.trial.coverage.LimitCoverage;
import org.brakerules.trial.coverage.PointCoverage;
import org.brakerules.trial.coverage.RuleCoverage;
import org.brakerules.trial.coverage.SideCoverage;

/** The tables of one component on the page: rules with their conditions, limits, points. */
final class ComponentTables {

  /** So many names of cases are enough to find the rest. */
  private static final int NAMES = 5;

  private final String component;
  private final Coverage coverage;
  private final Markup page;

  ComponentTables(String component, Coverage all, Markup page) {
    this.component = component;
    this.coverage = all.of(List.of(component));
    this.page = page;
  }

  void write() {
    page.open("section", "id", Markup.anchor("component", component));
    page.element("h2", component);
    if (!coverage.rules().isEmpty()) {
      rules();
      conditions();
    }
    if (!coverage.limits().isEmpty()) {
      limits();
    }
    if (!coverage.points().isEmpty()) {
      points();
    }
    page.close();
  }

  private void rules() {
    page.table("Rules of " + component, List.of("Rule", "Fires in", "Near in"));
    for (RuleCoverage rule : coverage.rules()) {
      page.open("tr", "id", Markup.anchor("rule", rule.id()));
      page.element("th", rule.id() + " " + rule.title(), "scope", "row");
      fires(rule.fires());
      shown(!rule.near().isEmpty(), CoverageReport.shownBy(rule.near()));
      page.close();
    }
    page.endTable();
  }

  private void fires(List<CaseName> cases) {
    if (cases.isEmpty()) {
      shown(false, "no case");
      return;
    }
    page.open("td").open("ul");
    cases.stream().limit(NAMES).forEach(name -> page.element("li", name.toString()));
    if (cases.size() > NAMES) {
      page.element("li", "and %d more".formatted(cases.size() - NAMES));
    }
    page.closeTo("td");
  }

  private void conditions() {
    page.table(
        "Conditions of the rules of " + component,
        List.of("Rule", "Condition", "Holds in", "Alone fails in"));
    for (RuleCoverage rule : coverage.rules()) {
      for (ConditionCoverage condition : rule.conditions()) {
        page.open("tr").open("td");
        page.element("a", rule.id(), "href", "#" + Markup.anchor("rule", rule.id())).close();
        page.element("th", condition.text(), "scope", "row");
        shown(!condition.holds().isEmpty(), CoverageReport.shownBy(condition.holds()));
        shown(condition.isSeenToFail(), CoverageReport.failsIn(condition));
        page.close();
      }
    }
    page.endTable();
  }

  private void limits() {
    page.table("Limits of " + component, List.of("Limit", "Passes", "Side", "Shown by"));
    for (LimitCoverage limit : coverage.limits()) {
      for (SideCoverage side : limit.sides()) {
        page.open("tr").element("th", limit.id(), "scope", "row");
        page.element("td", limit.passes()).element("td", side.side().inWords());
        shown(side.isShown(), CoverageReport.shownBy(side));
        page.close();
      }
    }
    page.endTable();
  }

  private void points() {
    page.table(
        "Inspection points of " + component,
        List.of("Point", "Needed", "Rules", "Limits", "Asked for by"));
    for (PointCoverage point : coverage.points()) {
      page.open("tr").element("th", point.id(), "scope", "row").element("td", point.needed());
      shown(point.isRead(), point.isRead() ? String.join(", ", point.rules()) : "nobody reads it");
      page.element("td", String.join(", ", point.limits()));
      page.element("td", String.join(", ", point.askedBy())).close();
    }
    page.endTable();
  }

  /** What is open stands out in words and by its frame, not by colour. */
  private void shown(boolean isShown, String words) {
    if (isShown) {
      page.element("td", words);
    } else {
      page.element("td", "open: " + words, "class", "open");
    }
  }
}
