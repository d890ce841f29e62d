package org.brakerules.harness.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.Rule;
import org.brakerules.limit.Limit;

/** Everything the rule base holds about one component, on one page. */
final class ComponentPage {

  private static final Links LINKS = Links.FROM_A_COMPONENT;

  private final String component;
  private final Material material;
  private final History history;
  private final List<Rule> rules;
  private final List<Limit> limits;
  private final List<RuleBaseFiles.Row> points;

  ComponentPage(String component, Material material, History history) {
    this.component = component;
    this.material = material;
    this.history = history;
    this.rules = material.rulesOf(component);
    this.limits =
        material.limitsOf(component).stream().filter(row -> !material.isByComparison(row)).toList();
    this.points = material.pointsOf(component);
  }

  Page page() {
    String text =
        material.files().text(component + "/" + component + ".md").orElse(title())
            + section("Findings and the rules they lead to", findings())
            + section("Limits", limits())
            + section("Inspection points", points())
            + new RuleChapter(material).of(rules)
            + new CaseChapter(material).of(material.casesOf(component))
            + "\n## History\n\n"
            + history.of(ids());
    return new Page("components/" + component + ".md", text);
  }

  private String title() {
    String words = component.replace('-', ' ');
    return "# " + Character.toUpperCase(words.charAt(0)) + words.substring(1) + "\n";
  }

  private static String section(String title, MarkdownTable table) {
    return table.isEmpty() ? "" : "\n## " + title + "\n\n" + table;
  }

  /** From what is seen or measured to the rules that read it: where every finding leads. */
  private MarkdownTable findings() {
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
                by.stream().map(ComponentPage::withVerdict).collect(Collectors.joining(", "))));
    return table;
  }

  private static String withVerdict(Rule rule) {
    return LINKS.rule(rule) + " (" + Links.words(rule.verdict()) + ")";
  }

  /** In short; the page of limits has every row with all it says. */
  private MarkdownTable limits() {
    MarkdownTable table = new MarkdownTable("Limit", "Passes", "Applies to", "Rule set", "Source");
    for (Limit limit : limits) {
      table.row(
          LINKS.limit(limit.id()),
          limit.inWords(),
          limit.appliesTo().isEmpty() ? "all" : "`" + limit.appliesTo() + "`",
          limit.ruleSet().map(one -> "`" + one + "`").orElse("any"),
          LINKS.clause(limit.source()));
    }
    Material.ids(limits)
        .flatMap(id -> material.comparisons(id).stream())
        .forEach(
            held ->
                table.row(
                    LINKS.limit(held.id()),
                    held.comparison().inWords() + " the figure of each row",
                    "all",
                    "`" + held.ruleSet().orElseThrow() + "`",
                    LINKS.clause(held.source())));
    return table;
  }

  private MarkdownTable points() {
    MarkdownTable table =
        new MarkdownTable(
            "Point", "From", "Needed", "Brake", "Applies to", "With", "How", "Read by");
    for (RuleBaseFiles.Row point : points) {
      table.row(
          "`" + point.get("id") + "`",
          point.get("needed-from"),
          point.get("needed"),
          point.get("brake"),
          point.get("applies-to").isEmpty() ? "all" : "`" + point.get("applies-to") + "`",
          point.get("instrument"),
          point.get("how"),
          new PointReaders(component, point, material).inWords(LINKS));
    }
    return table;
  }

  private List<String> ids() {
    return Stream.of(
            rules.stream().map(Rule::id),
            Material.ids(limits),
            points.stream().map(point -> point.get("id")))
        .flatMap(ids -> ids)
        .toList();
  }
}
