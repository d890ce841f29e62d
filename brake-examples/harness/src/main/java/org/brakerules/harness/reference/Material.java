package org.brakerules.harness.reference;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.harness.cases.CaseFiles;
import org.brakerules.harness.cases.RuleCase;
import org.brakerules.limit.Limit;
import org.brakerules.trial.TrialRules;

/**
 * What the book is made from, and who reads, cites and proves whom.
 *
 * @param components the components, from the camshaft outwards
 * @param rules all rules
 * @param limits all rows of the limit tables
 * @param cases all cases
 * @param conflicts the conflicts between sources
 * @param files the files of the rule base
 */
record Material(
    List<String> components,
    List<Rule> rules,
    List<Limit> limits,
    List<RuleCase> cases,
    List<Conflict> conflicts,
    RuleBaseFiles files) {

  /** Of the rule base that this program brings. */
  static Material standard() {
    BrakeRules base = BrakeRules.standard();
    return of(
        base.rules(), base.limits(), CaseFiles.ofThisArtifact(), RuleBaseFiles.ofThisArtifact());
  }

  /** Of a rule base in a folder with {@code org/brakerules/rules} in it. */
  static Material of(TrialRules rules, Path resources) {
    CaseFiles cases = CaseFiles.in(resources, BrakeRules.standard().components());
    return of(rules.rules(), rules.limits(), cases, RuleBaseFiles.in(resources));
  }

  private static Material of(
      List<Rule> rules, List<Limit> limits, CaseFiles cases, RuleBaseFiles files) {
    return new Material(
        BrakeRules.standard().components(),
        rules,
        limits,
        cases.all().stream()
            .sorted(Comparator.comparing(RuleCase::component).thenComparing(RuleCase::name))
            .toList(),
        Conflict.all(files),
        files);
  }

  /** The ids of rules, limits and inspection points. */
  Set<String> ids() {
    return Stream.of(
            rules.stream().map(Rule::id),
            limits.stream().map(Limit::id),
            components.stream()
                .flatMap(component -> pointsOf(component).stream())
                .map(point -> point.get("id")))
        .flatMap(ids -> ids)
        .collect(Collectors.toUnmodifiableSet());
  }

  List<Rule> rulesOf(String component) {
    return rules.stream().filter(rule -> rule.component().equals(component)).toList();
  }

  List<Limit> limitsOf(String component) {
    return limits.stream().filter(limit -> limit.part().id().equals(component)).toList();
  }

  List<RuleCase> casesOf(String component) {
    return cases.stream().filter(one -> one.component().equals(component)).toList();
  }

  /** What each rule set says of a whole vehicle, with its id. */
  List<RuleBaseFiles.Row> ruleSets() {
    return files.rows("rule-sets.csv").stream()
        .map(row -> row.get("id"))
        .flatMap(
            id ->
                files.rows("rule-sets/" + id + "/rule-set.csv").stream()
                    .map(row -> row.with("id", id)))
        .toList();
  }

  /** The rows of one limit as they are written, without those that a comparison made of them. */
  List<Limit> written(String id) {
    return limit(id).stream().filter(row -> !isByComparison(row)).toList();
  }

  /** Of each rule set that holds a limit on another side, one of the rows that makes. */
  List<Limit> comparisons(String id) {
    return limit(id).stream()
        .filter(this::isByComparison)
        .collect(
            Collectors.toMap(
                Limit::ruleSet, row -> row, (first, second) -> first, LinkedHashMap::new))
        .values()
        .stream()
        .toList();
  }

  /** Whether a rule set made the row by holding one of all rule sets on another side. */
  boolean isByComparison(Limit row) {
    return row.ruleSet().isPresent()
        && limit(row.id()).stream()
            .filter(other -> other.appliesTo().equals(row.appliesTo()))
            .anyMatch(other -> other.exceptUnder().contains(row.ruleSet().get()));
  }

  List<RuleBaseFiles.Row> pointsOf(String component) {
    return files.rows(component + "/" + component + ".points.csv");
  }

  Optional<Rule> rule(String id) {
    return rules.stream().filter(rule -> rule.id().equals(id)).findFirst();
  }

  /** The rows of one limit; rows for other dates, rule sets or configurations share its id. */
  List<Limit> limit(String id) {
    return limits.stream().filter(limit -> limit.id().equals(id)).toList();
  }

  List<Rule> readersOf(String read) {
    return rules.stream().filter(rule -> rule.reads().contains(read)).toList();
  }

  /** The rows of all limits that a rule reads. */
  List<Limit> limitsReadBy(Rule rule) {
    return limits.stream().filter(limit -> rule.reads().contains(limit.id())).toList();
  }

  List<RuleCase> firing(Rule rule) {
    return cases.stream().filter(one -> one.expected().fires().contains(rule.id())).toList();
  }

  List<RuleCase> justSilent(Rule rule) {
    return cases.stream().filter(one -> one.expected().near().contains(rule.id())).toList();
  }

  /** The conflicts that a limit or rule settles. */
  List<Conflict> conflictsOf(String limitOrRule) {
    return conflicts.stream()
        .filter(conflict -> conflict.concerns().contains(limitOrRule))
        .toList();
  }

  /** The ids of limits, each once, in the order of their tables. */
  static Stream<String> ids(List<Limit> limits) {
    return limits.stream().map(Limit::id).distinct();
  }
}
