package org.brakerules.harness.reference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.brakerules.Rule;
import org.brakerules.harness.cases.RuleCase;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Verdict;

/** Everything the rule base holds about one component, on one page. */
final class ComponentPage {

  private final String component;
  private final List<Rule> allRules;
  private final List<Rule> rules;
  private final List<Limit> limits;
  private final List<RuleBaseFile.Row> points;
  private final List<RuleCase> cases;
  private final StringBuilder text = new StringBuilder();

  ComponentPage(String component, List<Rule> allRules, List<Limit> limits, List<RuleCase> cases) {
    this.component = component;
    this.allRules = allRules;
    this.rules = allRules.stream().filter(rule -> rule.component().equals(component)).toList();
    this.limits = limits;
    this.cases = cases;
    this.points = RuleBaseFile.rows(component + "/" + component + ".points.csv");
  }

  String markdown() {
    text.append(ReferenceBook.GENERATED);
    text.append(RuleBaseFile.text(component + "/" + component + ".md").orElse(title()));
    findings();
    limits();
    points();
    if (!rules.isEmpty()) {
      text.append("\n## Rules\n");
    }
    rules.forEach(this::rule);
    return text.toString();
  }

  private String title() {
    String words = component.replace('-', ' ');
    return "# " + Character.toUpperCase(words.charAt(0)) + words.substring(1) + "\n";
  }

  /** From what is seen or measured to the rules that read it: where every finding leads. */
  private void findings() {
    Map<String, List<Rule>> readers = new TreeMap<>();
    for (Rule rule : rules) {
      for (String read : rule.reads()) {
        readers.computeIfAbsent(read, name -> new ArrayList<>()).add(rule);
      }
    }
    MarkdownTable table = new MarkdownTable("Seen, measured or stated", "Rules that read it");
    readers.forEach(
        (read, by) ->
            table.row(
                "`" + read + "`",
                by.stream().map(ComponentPage::linked).collect(Collectors.joining(", "))));
    section("Findings and the rules they lead to", table);
  }

  private void limits() {
    MarkdownTable table =
        new MarkdownTable(
            "Limit",
            "Passes",
            "Where and how",
            "Applies to",
            "Rule set",
            "Holds",
            "Source",
            "Note");
    for (Limit limit : limits) {
      table.row(
          "`" + limit.id() + "`",
          limit.inWords(),
          howRead(limit),
          limit.appliesTo().isEmpty() ? "all" : "`" + limit.appliesTo() + "`",
          limit.ruleSet().map(one -> "`" + one + "`").orElse("any"),
          dates(limit),
          cited(limit.source()),
          limit.note());
    }
    section("Limits", table);
  }

  private static String howRead(Limit limit) {
    String station = limit.station().map(one -> one.inWords() + "; ").orElse("");
    return station
        + limit.methods().stream().map(one -> one.inWords()).collect(Collectors.joining(" or "))
        + limit.moment().map(one -> "; " + one.inWords()).orElse("");
  }

  private static String dates(Limit limit) {
    String from = limit.from().map(day -> "from " + day).orElse("");
    String to = limit.to().map(day -> " to " + day).orElse("");
    return (from + to).isEmpty() ? "always" : (from + to).strip();
  }

  private void points() {
    MarkdownTable table =
        new MarkdownTable(
            "Point", "From", "Needed", "Brake", "Applies to", "With", "How", "Read by");
    for (RuleBaseFile.Row point : points) {
      table.row(
          "`" + point.get("id") + "`",
          point.get("needed-from"),
          point.get("needed"),
          point.get("brake"),
          point.get("applies-to").isEmpty() ? "all" : "`" + point.get("applies-to") + "`",
          point.get("instrument"),
          point.get("how"),
          readers(point));
    }
    section("Inspection points", table);
  }

  private String readers(RuleBaseFile.Row point) {
    List<String> byRule =
        allRules.stream()
            .filter(rule -> rule.reads().contains(readName(point)))
            .map(Rule::id)
            .toList();
    List<String> byLimit =
        limits.stream()
            .filter(limit -> limit.property().equals(point.get("property")))
            .map(limit -> "`" + limit.id() + "`")
            .distinct()
            .toList();
    return String.join(", ", byRule)
        + (byRule.isEmpty() || byLimit.isEmpty() ? "" : ", ")
        + String.join(", ", byLimit);
  }

  private String readName(RuleBaseFile.Row point) {
    String id = point.get("id");
    return point.get("property").startsWith("layout.") ? id.substring(component.length() + 1) : id;
  }

  private void rule(Rule rule) {
    text.append("\n### ").append(rule.id()).append(' ').append(rule.title()).append("\n\n");
    text.append("Says: ").append(words(rule.verdict())).append("  \n");
    text.append("Source: ")
        .append(rule.source().stream().map(ComponentPage::cited).collect(Collectors.joining("; ")))
        .append("\n\n```\n")
        .append(rule.text())
        .append("\n```\n");
    caseList("Cases in which it speaks", rule, one -> one.expected().fires());
    caseList("Near misses", rule, one -> one.expected().near());
  }

  private void caseList(String title, Rule rule, Function<RuleCase, List<String>> names) {
    List<String> found =
        cases.stream()
            .filter(one -> names.apply(one).contains(rule.id()))
            .sorted(Comparator.comparing(RuleCase::component).thenComparing(RuleCase::name))
            .map(
                one ->
                    "- " + one.name() + (one.source().isEmpty() ? "" : " (" + one.source() + ")"))
            .toList();
    if (!found.isEmpty()) {
      text.append('\n').append(title).append(":\n\n").append(String.join("\n", found)).append('\n');
    }
  }

  private void section(String title, MarkdownTable table) {
    if (!table.isEmpty()) {
      text.append("\n## ").append(title).append("\n\n").append(table);
    }
  }

  static String words(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String linked(Rule rule) {
    return "[" + rule.id() + "](#" + anchor(rule) + ") (" + words(rule.verdict()) + ")";
  }

  static String anchor(Rule rule) {
    return (rule.id() + " " + rule.title())
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z0-9 -]", "")
        .replace(' ', '-');
  }

  static String cited(Source source) {
    return "[" + source.citation() + "](../sources.md) (" + source.standing().inWords() + ")";
  }
}
