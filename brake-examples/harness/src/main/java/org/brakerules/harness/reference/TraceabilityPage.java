package org.brakerules.harness.reference;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.brakerules.Rule;
import org.brakerules.harness.cases.RuleCase;

/** From every clause to the limits, rules and cases that rest on it. */
final class TraceabilityPage {

  private static final Links LINKS = Links.FROM_THE_TOP;
  private static final Set<String> WITHOUT_TEXT = Set.of("common-practice", "memory");

  private final Material material;

  TraceabilityPage(Material material) {
    this.material = material;
  }

  Page page() {
    String sources =
        material.files().rows("sources.csv").stream()
            .map(this::source)
            .collect(Collectors.joining());
    return new Page(
        "traceability.md",
        """
        # From clause to case

        Every clause that something cites, with the limits whose figures it gives, the rules that \
        cite it or read such a limit, and the cases in which those rules speak or just do not. Where \
        no text stands behind a rule there is no clause to trace; such rules are listed, and their \
        cases stand with each. The way back, from a case to its rules, limits and clauses, stands \
        on the page of each component under Cases.
        """
            + sources);
  }

  private String source(RuleBaseFiles.Row source) {
    String id = source.get("id");
    return "\n## "
        + id
        + "\n\n"
        + source.get("title")
        + " ("
        + source.get("standing").replace('-', ' ')
        + ").\n"
        + Clause.allOf(id, material).stream()
            .map(clause -> clause(clause) + (hasText(source) ? traced(clause) : listed(clause)))
            .collect(Collectors.joining());
  }

  private static boolean hasText(RuleBaseFiles.Row source) {
    return !WITHOUT_TEXT.contains(source.get("standing"));
  }

  private static String clause(Clause clause) {
    return "\n### "
        + Citation.heading(clause.citation())
        + "\n"
        + line("Limits", Material.ids(clause.limits()).toList(), LINKS::limit)
        + line("Rule sets", clause.ruleSets(), Function.identity())
        + line("Cautions", clause.cautions(), id -> "[" + id + "](cautions.md)")
        + LINKS.lineOf(clause.conflicts());
  }

  private static <T> String line(String title, List<T> names, Function<T, String> shown) {
    return names.isEmpty()
        ? ""
        : "\n" + title + ": " + names.stream().map(shown).collect(Collectors.joining(", ")) + "\n";
  }

  private static String listed(Clause clause) {
    return line("Rules", clause.rules(), LINKS::rule);
  }

  private String traced(Clause clause) {
    MarkdownTable table =
        new MarkdownTable("Rule", "Rests on it by", "Cases in which it speaks", "Near misses");
    for (Rule rule : clause.rules()) {
      table.row(
          LINKS.rule(rule) + " " + rule.title(),
          by(rule, clause),
          cases(material.firing(rule)),
          cases(material.justSilent(rule)));
    }
    return table.isEmpty() ? "" : "\n" + table;
  }

  private static String by(Rule rule, Clause clause) {
    String limits =
        Material.ids(clause.limits())
            .filter(rule.reads()::contains)
            .map(LINKS::limit)
            .collect(Collectors.joining(", "));
    if (!clause.isCitedBy(rule)) {
      return limits;
    }
    return limits.isEmpty() ? "citing it" : "citing it, " + limits;
  }

  private static String cases(List<RuleCase> cases) {
    return cases.stream().map(LINKS::ruleCase).collect(Collectors.joining("; "));
  }
}
