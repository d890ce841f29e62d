package org.brakerules.internal.table;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.brakerules.model.decision.Source;
import org.brakerules.model.job.RuleSet;

/** The rules that do not speak under a rule set, from {@code rules-off.csv} of its folder. */
public final class RulesOffTable {

  /**
   * Why a rule keeps silent.
   *
   * @param source who says so
   * @param reason why, in words
   */
  public record Off(Source source, String reason) {}

  private record OfRule(Row row, Off off) {}

  private final Map<RuleSet, Map<String, OfRule>> byRuleSet = new LinkedHashMap<>();

  RulesOffTable(Iterable<Row> rows, SourceTable sources, RuleSetTable ruleSets) {
    for (Row row : rows) {
      RuleSet ruleSet = LimitTable.ruleSet(row, row.required("rule-set"), ruleSets);
      Off off =
          new Off(LimitTable.source(row, row.required("source"), sources), row.required("reason"));
      byRuleSet
          .computeIfAbsent(ruleSet, one -> new LinkedHashMap<>())
          .put(row.required("rule"), new OfRule(row, off));
    }
  }

  /** The ids of the rules that keep silent under a rule set. */
  public Set<String> under(RuleSet ruleSet) {
    return Set.copyOf(byRuleSet.getOrDefault(ruleSet, Map.of()).keySet());
  }

  /** Why a rule keeps silent under a rule set; empty if it speaks. */
  public Optional<Off> of(RuleSet ruleSet, String rule) {
    return Optional.ofNullable(byRuleSet.getOrDefault(ruleSet, Map.of()).get(rule))
        .map(OfRule::off);
  }

  /**
   * Holds the rows against the rules there are.
   *
   * @throws RuleBaseException if a row names another
   */
  public void check(Collection<String> rules) {
    List<String> known = List.copyOf(rules);
    byRuleSet
        .values()
        .forEach(
            ofRules ->
                ofRules.forEach(
                    (id, of) ->
                        of.row()
                            .known(
                                id,
                                "rule",
                                name -> Optional.of(name).filter(known::contains),
                                known)));
  }
}
