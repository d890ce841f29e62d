package org.brakerules.harness.reference;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.brakerules.Rule;
import org.brakerules.limit.Limit;

/** Every row of the trade's decision tables, with the rules, looks and limits that answer it. */
final class DecisionTables {

  private static final String FILE = "decision-tables.csv";

  private final Map<String, Rule> rules;
  private final Map<String, List<Limit>> limits;
  private final List<RuleBaseFile.Row> rows = RuleBaseFile.rows(FILE);

  DecisionTables(List<Rule> rules, List<Limit> limits) {
    this.rules = rules.stream().collect(Collectors.toMap(Rule::id, Function.identity()));
    this.limits = limits.stream().collect(Collectors.groupingBy(Limit::id));
  }

  String markdown() {
    StringBuilder text = new StringBuilder(ReferenceBook.GENERATED);
    text.append(
        """
        # Decision tables

        What a technician finds, row by row, and the rules that answer it. A row without a rule is \
        answered by a look or a reading the decision cannot do without.
        """);
    rows.stream()
        .map(row -> row.get("table"))
        .distinct()
        .forEach(table -> text.append("\n## ").append(table).append("\n\n").append(table(table)));
    return text.toString();
  }

  private MarkdownTable table(String title) {
    MarkdownTable table =
        new MarkdownTable("Part", "Sign or condition", "Rules", "Looks, readings and limits");
    rows.stream()
        .filter(row -> row.get("table").equals(title))
        .forEach(
            row ->
                table.row(
                    row.get("part"),
                    row.get("sign"),
                    join(names(row), this::rule),
                    join(names(row), this::lookOrLimit)));
    return table;
  }

  /** The names of one row, in the order its author gave them. */
  static List<String> names(RuleBaseFile.Row row) {
    return Arrays.stream(row.get("rules").split(";", -1)).map(String::strip).toList();
  }

  private static String join(List<String> names, Function<String, Optional<String>> shown) {
    return names.stream()
        .flatMap(name -> shown.apply(name).stream())
        .collect(Collectors.joining(", "));
  }

  private Optional<String> rule(String name) {
    return Optional.ofNullable(rules.get(name))
        .map(
            rule ->
                "[%s](components/%s.md#%s) (%s)"
                    .formatted(
                        rule.id(),
                        rule.component(),
                        ComponentPage.anchor(rule),
                        ComponentPage.words(rule.verdict())));
  }

  private Optional<String> lookOrLimit(String name) {
    if (rules.containsKey(name)) {
      return Optional.empty();
    }
    return Optional.of(limits.containsKey(name) ? "limit `" + name + "`" : "`" + name + "`");
  }
}
