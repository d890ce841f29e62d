package org.brakerules.harness.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.harness.cases.CaseFiles;
import org.brakerules.harness.cases.RuleCase;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;

/** All reference pages, by the file each is written to. */
public final class ReferenceBook {

  static final String GENERATED =
      "<!-- Generated from the rule base; do not edit. See DEVELOPERS.md. -->\n\n";

  private final List<String> components;
  private final List<Rule> rules;
  private final List<Limit> limits;
  private final List<RuleCase> cases = CaseFiles.all();

  private ReferenceBook(BrakeRules base) {
    this.components = base.components();
    this.rules = base.rules();
    this.limits = base.limits();
  }

  /** Makes every page of a rule base. */
  public static SortedMap<String, String> pages(BrakeRules base) {
    return new ReferenceBook(base).pages();
  }

  private SortedMap<String, String> pages() {
    SortedMap<String, String> pages = new TreeMap<>();
    for (String component : components) {
      pages.put("components/" + component + ".md", page(component).markdown());
    }
    pages.put("README.md", contents());
    pages.put("decision-tables.md", new DecisionTables(rules, limits).markdown());
    pages.put("sources.md", sources());
    pages.put("limits.md", limitsInOneTable());
    pages.put("standing.md", weakest());
    pages.put("cautions.md", cautions());
    return pages;
  }

  private ComponentPage page(String component) {
    return new ComponentPage(component, rules, limitsOf(component), cases);
  }

  private List<Limit> limitsOf(String component) {
    return limits.stream().filter(limit -> limit.part().id().equals(component)).toList();
  }

  private String contents() {
    MarkdownTable table = new MarkdownTable("Component", "Rules", "Limits", "Inspection points");
    for (String component : components) {
      table.row(
          "[" + component.replace('-', ' ') + "](components/" + component + ".md)",
          String.valueOf(rulesOf(component)),
          String.valueOf(limitsOf(component).size()),
          String.valueOf(RuleBaseFile.rows(component + "/" + component + ".points.csv").size()));
    }
    return GENERATED
        + "# Reference\n\nWhat the rule base holds, page by page.\n\n"
        + table
        + "\n"
        + "- [Decision tables](decision-tables.md): what is found, row by row, and the rules that answer it\n"
        + "- [Limits](limits.md), all in one table\n"
        + "- [Sources](sources.md), with everything that rests on each\n"
        + "- [Standing](standing.md): what rests on common practice or memory alone\n"
        + "- [Cautions](cautions.md)\n";
  }

  private long rulesOf(String component) {
    return rules.stream().filter(rule -> rule.component().equals(component)).count();
  }

  private String sources() {
    MarkdownTable table =
        new MarkdownTable("Source", "Title", "Standing", "Rule set", "Note", "What rests on it");
    for (RuleBaseFile.Row source : RuleBaseFile.rows("sources.csv")) {
      String id = source.get("id");
      table.row(
          "`" + id + "`",
          source.get("title"),
          source.get("standing").replace('-', ' '),
          source.get("rule-set").isEmpty() ? "" : "`" + source.get("rule-set") + "`",
          source.get("note"),
          String.join(", ", restingOn(id)));
    }
    return GENERATED + "# Sources\n\n" + table;
  }

  private List<String> restingOn(String id) {
    List<String> resting = new ArrayList<>();
    limits.stream()
        .filter(limit -> limit.source().id().equals(id))
        .map(limit -> "limit `" + limit.id() + "`" + clause(limit.source()))
        .forEach(resting::add);
    rules.forEach(
        rule ->
            rule.source().stream()
                .filter(source -> source.id().equals(id))
                .map(source -> linked(rule) + clause(source))
                .forEach(resting::add));
    RuleBaseFile.rows("cautions.csv").stream()
        .filter(caution -> cites(caution.get("source"), id))
        .map(caution -> "caution `" + caution.get("id") + "`")
        .forEach(resting::add);
    return resting;
  }

  private static boolean cites(String sources, String id) {
    return Stream.of(sources.split(";"))
        .map(String::strip)
        .anyMatch(one -> one.equals(id) || one.startsWith(id + "#"));
  }

  private static String clause(Source source) {
    return source.clause().isEmpty() ? "" : " (" + source.clause() + ")";
  }

  private static String linked(Rule rule) {
    return "["
        + rule.id()
        + "](components/"
        + rule.component()
        + ".md#"
        + ComponentPage.anchor(rule)
        + ")";
  }

  private String limitsInOneTable() {
    MarkdownTable table = new MarkdownTable("Limit", "Passes", "Applies to", "Rule set", "Source");
    for (Limit limit : limits) {
      table.row(
          "[" + limit.id() + "](components/" + limit.part().id() + ".md#limits)",
          limit.inWords(),
          limit.appliesTo().isEmpty() ? "all" : "`" + limit.appliesTo() + "`",
          limit.ruleSet().map(one -> "`" + one + "`").orElse("any"),
          limit.source().citation() + " (" + limit.source().standing().inWords() + ")");
    }
    return GENERATED + "# Limits\n\n" + table;
  }

  private String weakest() {
    String limitList =
        limits.stream()
            .filter(limit -> isWeak(limit.source()))
            .map(limit -> "- `" + limit.id() + "`: " + limit.source().standing().inWords())
            .collect(Collectors.joining("\n"));
    String ruleList =
        rules.stream()
            .filter(rule -> rule.source().stream().allMatch(ReferenceBook::isWeak))
            .map(rule -> "- " + linked(rule) + " " + rule.title() + ": " + standings(rule))
            .collect(Collectors.joining("\n"));
    return GENERATED
        + "# What rests on common practice or memory alone\n\n"
        + "An auditor will want these first: no published text stands behind them.\n\n"
        + "## Limits\n\n"
        + limitList
        + "\n\n## Rules\n\n"
        + ruleList
        + "\n";
  }

  private static String standings(Rule rule) {
    return rule.source().stream()
        .map(source -> source.standing().inWords())
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static boolean isWeak(Source source) {
    return source.standing() == Standing.COMMON_PRACTICE || source.standing() == Standing.MEMORY;
  }

  private static String cautions() {
    MarkdownTable table = new MarkdownTable("Caution", "From", "Text", "Source");
    for (RuleBaseFile.Row caution : RuleBaseFile.rows("cautions.csv")) {
      table.row(
          "`" + caution.get("id") + "`",
          caution.get("from"),
          caution.get("text"),
          caution.get("source"));
    }
    return GENERATED + "# Cautions\n\n" + table;
  }
}
