package org.brakerules.harness.reference;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.brakerules.Rule;
import org.brakerules.harness.cases.RuleCase;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Verdict;

/**
 * Links from one page to what stands on another.
 *
 * @param top the way from the page to the folder of the reference
 * @param components the way from the page to the folder of the components
 */
record Links(String top, String components) {

  /** From a page in the folder of the reference. */
  static final Links FROM_THE_TOP = new Links("", "components/");

  /** From the page of a component. */
  static final Links FROM_A_COMPONENT = new Links("../", "");

  String rule(Rule rule) {
    return link(rule.id(), page(rule.component()), heading(rule));
  }

  String limit(String id) {
    return link(id, top + "limits.md", id);
  }

  String ruleCase(RuleCase one) {
    return link(one.name(), page(one.component()), one.name());
  }

  String conflict(String id) {
    return link(id, top + "conflicts.md", id);
  }

  /** A line that names conflicts, below what they concern. */
  String lineOf(List<Conflict> conflicts) {
    return conflicts.isEmpty()
        ? ""
        : "\nSources differ: "
            + conflicts.stream()
                .map(conflict -> conflict(conflict.id()))
                .collect(Collectors.joining(", "))
            + "\n";
  }

  /** The clause, where it leads to everything that rests on it, and how far it can be relied on. */
  String clause(Source source) {
    return clauseAlone(source) + " (" + source.standing().inWords() + ")";
  }

  String clauseAlone(Source source) {
    return clause(source.citation());
  }

  String clause(String citation) {
    return link(citation, top + "traceability.md", Citation.heading(citation));
  }

  private static String link(String words, String page, String heading) {
    return "[" + words + "](" + page + "#" + anchor(heading) + ")";
  }

  private String page(String component) {
    return components + component + ".md";
  }

  static String heading(Rule rule) {
    return rule.id() + " " + rule.title();
  }

  /** The anchor that readers of Markdown give a heading. */
  static String anchor(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9_ -]", "").replace(' ', '-');
  }

  static String words(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
