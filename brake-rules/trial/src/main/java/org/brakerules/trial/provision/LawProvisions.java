package org.brakerules.trial.provision;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.table.TestPressure;
import org.brakerules.model.decision.Source;
import org.brakerules.model.job.RuleSet;
import org.brakerules.trial.provision.Provision.Kind;

/** What is law, and of which rule set: it decides whether a maker's limit may displace a row. */
final class LawProvisions {

  private LawProvisions() {}

  static Stream<Provision> sources(Tables tables) {
    return tables.sources().ids().stream()
        .map(id -> tables.sources().find(id).orElseThrow())
        .map(
            source ->
                new Provision(Kind.SOURCE, source.id(), "", List.of(standing(source, tables))));
  }

  private static String standing(Source source, Tables tables) {
    return "standing "
        + source.standing().inWords()
        + tables.sources().lawOf(source).map(law -> " | rule-set " + law.id()).orElse("");
  }

  static Stream<Provision> ruleSets(Tables tables) {
    return tables.ruleSets().ids().stream()
        .map(id -> tables.ruleSets().find(id).orElseThrow())
        .map(ruleSet -> new Provision(Kind.RULE_SET, ruleSet.id(), "", demands(ruleSet, tables)));
  }

  private static List<String> demands(RuleSet ruleSet, Tables tables) {
    Stream<String> pressure =
        tables.ruleSets().testPressure(ruleSet).stream().map(LawProvisions::band);
    Stream<String> adjusters =
        tables.ruleSets().automaticAdjustersFrom(ruleSet).stream().map(LawProvisions::from);
    return Stream.of(pressure, adjusters, comparisons(ruleSet, tables), rulesOff(ruleSet, tables))
        .flatMap(words -> words)
        .toList();
  }

  private static Stream<String> comparisons(RuleSet ruleSet, Tables tables) {
    return tables
        .limits()
        .rows()
        .filter(LimitRow::byComparison)
        .map(LimitRow::limit)
        .filter(limit -> limit.ruleSet().filter(ruleSet::equals).isPresent())
        .map(
            limit ->
                limit.id()
                    + " "
                    + limit.comparison().inWords()
                    + " | source "
                    + limit.source().citation())
        .distinct();
  }

  private static Stream<String> rulesOff(RuleSet ruleSet, Tables tables) {
    return tables.rulesOff().under(ruleSet).stream().sorted().map(rule -> "without " + rule);
  }

  private static String band(TestPressure band) {
    return "test pressure " + band.least() + " to " + band.most();
  }

  private static String from(LocalDate day) {
    return "automatic adjusters from " + day;
  }
}
