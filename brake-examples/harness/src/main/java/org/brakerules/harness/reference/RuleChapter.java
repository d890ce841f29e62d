package org.brakerules.harness.reference;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.Rule;
import org.brakerules.harness.cases.RuleCase;

/** The rules of a component as they were written, each with its clauses, limits and cases. */
final class RuleChapter {

  private static final Links LINKS = Links.FROM_A_COMPONENT;

  private final Material material;

  RuleChapter(Material material) {
    this.material = material;
  }

  String of(List<Rule> rules) {
    return rules.isEmpty()
        ? ""
        : "\n## Rules\n" + rules.stream().map(this::rule).collect(Collectors.joining());
  }

  private String rule(Rule rule) {
    return "\n### "
        + Links.heading(rule)
        + "\n\nSays: "
        + Links.words(rule.verdict())
        + "  \nSource: "
        + rule.source().stream().map(LINKS::clause).collect(Collectors.joining("; "))
        + limits(rule)
        + "\n\n```\n"
        + rule.text()
        + "\n```\n"
        + LINKS.lineOf(material.conflictsOf(rule.id()))
        + cases("Cases in which it speaks", material.firing(rule))
        + cases("Near misses", material.justSilent(rule));
  }

  private String limits(Rule rule) {
    String limits =
        Material.ids(material.limitsReadBy(rule))
            .map(LINKS::limit)
            .collect(Collectors.joining(", "));
    return limits.isEmpty() ? "" : "  \nLimits: " + limits;
  }

  private static String cases(String title, List<RuleCase> cases) {
    return cases.isEmpty()
        ? ""
        : "\n"
            + title
            + ":\n\n"
            + cases.stream()
                .map(one -> "- " + LINKS.ruleCase(one) + checked(one) + "\n")
                .collect(Collectors.joining());
  }

  private static String checked(RuleCase one) {
    return one.source().isEmpty() ? "" : " (" + one.source() + ")";
  }
}
