package org.brakerules.harness.reference;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.brakerules.Rule;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Source;

/** A clause of a source, and everything in the rule base that cites it. */
record Clause(String citation, Material material) {

  /** Every clause of a source that something cites, in order. */
  static List<Clause> allOf(String source, Material material) {
    Stream<String> fromTables =
        Stream.of(
                cited(material.files().rows("cautions.csv"), "source"),
                cited(material.ruleSets(), "test-pressure-source"),
                cited(material.ruleSets(), "automatic-adjusters-source"))
            .flatMap(citations -> citations);
    Stream<Source> fromRules = material.rules().stream().flatMap(rule -> rule.source().stream());
    Stream<Source> fromLimits = material.limits().stream().map(Limit::source);
    TreeSet<String> citations = new TreeSet<>();
    Stream.concat(fromTables, Stream.concat(fromRules, fromLimits).map(Source::citation))
        .filter(citation -> Citation.source(citation).equals(source))
        .forEach(citations::add);
    return citations.stream().map(citation -> new Clause(citation, material)).toList();
  }

  private static Stream<String> cited(List<RuleBaseFiles.Row> rows, String column) {
    return rows.stream().flatMap(row -> row.names(column).stream());
  }

  /** The rows of limits that cite it. */
  List<Limit> limits() {
    return material.limits().stream()
        .filter(limit -> limit.source().citation().equals(citation))
        .toList();
  }

  /** The rules that cite it themselves, or read a limit that does. */
  List<Rule> rules() {
    List<String> limits = Material.ids(limits()).toList();
    return material.rules().stream()
        .filter(rule -> isCitedBy(rule) || rule.reads().stream().anyMatch(limits::contains))
        .toList();
  }

  boolean isCitedBy(Rule rule) {
    return rule.source().stream().anyMatch(source -> source.citation().equals(citation));
  }

  List<String> cautions() {
    return naming(material.files().rows("cautions.csv"), "source");
  }

  /** What rule sets take from it. */
  List<String> ruleSets() {
    Stream<String> pressures =
        naming(material.ruleSets(), "test-pressure-source").stream()
            .map(id -> "test pressure of " + id);
    Stream<String> days =
        naming(material.ruleSets(), "automatic-adjusters-source").stream()
            .map(id -> "day of automatic adjusters of " + id);
    return Stream.concat(pressures, days).toList();
  }

  List<Conflict> conflicts() {
    return material.conflicts().stream()
        .filter(conflict -> conflict.clauses().contains(citation))
        .toList();
  }

  private List<String> naming(List<RuleBaseFiles.Row> rows, String column) {
    return rows.stream()
        .filter(row -> row.names(column).contains(citation))
        .map(row -> row.get("id"))
        .toList();
  }
}
