package org.brakerules.harness.reference;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Every row of the trade's decision tables, with the rules, looks and limits that answer it. */
final class DecisionTables {

  private static final Links LINKS = Links.FROM_THE_TOP;

  private final Material material;
  private final List<RuleBaseFiles.Row> rows;

  DecisionTables(Material material) {
    this.material = material;
    this.rows = material.files().rows("decision-tables.csv");
  }

  Page page() {
    String tables =
        rows.stream()
            .map(row -> row.get("table"))
            .distinct()
            .map(table -> "\n## " + table + "\n\n" + table(table))
            .collect(Collectors.joining());
    return new Page(
        "decision-tables.md",
        """
        # Decision tables

        What a technician finds, row by row, and the rules that answer it. A row without a rule is \
        answered by a look or a reading the decision cannot do without.
        """
            + tables);
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
                    join(row.names("rules"), this::rule),
                    join(row.names("rules"), this::lookOrLimit)));
    return table;
  }

  private static String join(List<String> names, Function<String, Optional<String>> shown) {
    return names.stream()
        .flatMap(name -> shown.apply(name).stream())
        .collect(Collectors.joining(", "));
  }

  private Optional<String> rule(String name) {
    return material
        .rule(name)
        .map(rule -> LINKS.rule(rule) + " (" + Links.words(rule.verdict()) + ")");
  }

  private Optional<String> lookOrLimit(String name) {
    if (material.rule(name).isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        material.limit(name).isEmpty() ? "`" + name + "`" : "limit " + LINKS.limit(name));
  }
}
