package org.brakerules.trial.coverage;

import java.util.ArrayList;
import java.util.List;

/** Finds what is open: rules, then limits, points and sources. */
final class OpenItems {

  private final List<OpenItem> items = new ArrayList<>();

  private OpenItems() {}

  static List<OpenItem> of(Coverage coverage) {
    OpenItems open = new OpenItems();
    coverage.rules().forEach(open::rule);
    coverage.limits().forEach(open::limit);
    coverage.points().forEach(open::point);
    coverage.sources().forEach(open::source);
    return open.items;
  }

  private void rule(RuleCoverage rule) {
    if (rule.fires().isEmpty()) {
      add("rule-fires", rule.id(), rule.component(), "no case fires it");
    }
    if (rule.near().isEmpty()) {
      add("rule-near", rule.id(), rule.component(), "no case comes near it");
    }
    for (ConditionCoverage condition : rule.conditions()) {
      if (condition.holds().isEmpty()) {
        add("condition-holds", condition.id(), rule.component(), "no case fires the rule by it");
      }
      if (!condition.isSeenToFail()) {
        add("condition-fails", condition.id(), rule.component(), "no case in which it alone fails");
      }
    }
  }

  private void limit(LimitCoverage limit) {
    if (limit.sides().stream().noneMatch(SideCoverage::isShown) && limit.applies().isEmpty()) {
      add("limit-applies", limit.id(), limit.component(), "no case has a part it is for");
      return;
    }
    for (SideCoverage side : limit.sides()) {
      if (!side.isShown()) {
        add(
            "limit-" + side.side().word(),
            limit.id(),
            limit.component(),
            "no case with " + side.side().asSeen());
      }
    }
  }

  private void point(PointCoverage point) {
    if (!point.isRead()) {
      add(OpenItem.POINT, point.id(), point.component(), "no rule and no limit reads it");
    }
  }

  private void source(SourceCoverage source) {
    if (source.clauses().isEmpty()) {
      add("source", source.id(), "", "nothing rests on it");
    }
  }

  private void add(String what, String id, String component, String words) {
    items.add(new OpenItem(what, id, component, words));
  }
}
