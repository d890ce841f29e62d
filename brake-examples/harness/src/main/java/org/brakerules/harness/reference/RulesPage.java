package org.brakerules.harness.reference;

import java.util.stream.Collectors;
import org.brakerules.Rule;

/** Every rule in one list, for whoever holds a report and reads an id in it. */
final class RulesPage {

  private static final Links LINKS = Links.FROM_THE_TOP;

  private final Material material;

  RulesPage(Material material) {
    this.material = material;
  }

  Page page() {
    return new Page(
        "rules.md",
        """
        # Rules

        Look for the id that the report prints. It leads to the rule as it was written, with its \
        limits and its cases. Rules whose ids begin with GENERAL hold for every part and stand on \
        [a page of their own](general-rules.md).

        """
            + table());
  }

  private MarkdownTable table() {
    MarkdownTable table = new MarkdownTable("Rule", "Title", "Says", "Clauses", "Cases");
    for (Rule rule : material.rules()) {
      table.row(
          LINKS.rule(rule),
          rule.title(),
          Links.words(rule.verdict()),
          rule.source().stream().map(LINKS::clauseAlone).collect(Collectors.joining(", ")),
          material.firing(rule).size() + " and " + material.justSilent(rule).size() + " near");
    }
    return table;
  }
}
