package org.brakerules.harness.reference;

import java.util.List;
import java.util.stream.Collectors;

/** Every source, how far it can be relied on, and the clauses of it that are cited. */
final class SourcesPage {

  private static final Links LINKS = Links.FROM_THE_TOP;

  private final Material material;

  SourcesPage(Material material) {
    this.material = material;
  }

  Page page() {
    MarkdownTable table =
        new MarkdownTable(
            "Source", "Title", "Standing", "Rule set", "Note", "Clauses, with what rests on each");
    for (RuleBaseFiles.Row source : material.files().rows("sources.csv")) {
      table.row(
          "`" + source.get("id") + "`",
          source.get("title"),
          source.get("standing").replace('-', ' '),
          source.get("rule-set").isEmpty() ? "" : "`" + source.get("rule-set") + "`",
          source.get("note"),
          clauses(Clause.allOf(source.get("id"), material)));
    }
    return new Page("sources.md", "# Sources\n\n" + table);
  }

  private static String clauses(List<Clause> clauses) {
    return clauses.stream()
        .map(clause -> LINKS.clause(clause.citation()) + " (" + counted(clause) + ")")
        .collect(Collectors.joining(", "));
  }

  /** The page of clauses names them all; here their number tells how much hangs on a source. */
  private static String counted(Clause clause) {
    return List.of(
            count(clause.limits().size(), "limit row"),
            count(clause.rules().size(), "rule"),
            count(clause.cautions().size(), "caution"),
            count(clause.ruleSets().size(), "rule set"))
        .stream()
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static String count(int number, String thing) {
    return switch (number) {
      case 0 -> "";
      case 1 -> "1 " + thing;
      default -> number + " " + thing + "s";
    };
  }
}
