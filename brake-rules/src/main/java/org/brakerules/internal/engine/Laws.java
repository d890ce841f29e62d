package org.brakerules.internal.engine;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.brakerules.internal.table.Property;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.PartKind;

/** The rules that cite the law of a rule set, by the kinds of part they look at. */
public final class Laws {

  /**
   * A rule that cites a law.
   *
   * @param rule the rule
   * @param signs the signs it looks at on a kind of part
   */
  public record Law(RuleText rule, List<Property> signs) {}

  private final List<RuleText> rules;
  private final Map<RuleSet, Map<PartKind, List<Law>>> known = new ConcurrentHashMap<>();

  Laws(List<RuleText> rules) {
    this.rules = rules;
  }

  /** The laws of a rule set that look at signs on a kind of part. */
  public List<Law> of(RuleSet ruleSet, PartKind kind) {
    return known.computeIfAbsent(ruleSet, this::read).getOrDefault(kind, List.of());
  }

  private Map<PartKind, List<Law>> read(RuleSet ruleSet) {
    Map<PartKind, List<Law>> laws = new EnumMap<>(PartKind.class);
    for (RuleText rule : rules) {
      if (rule.laws().contains(ruleSet)) {
        rule.conditions().keySet().stream()
            .flatMap(type -> PartKind.of(type).stream())
            .forEach(kind -> add(rule, kind, laws));
      }
    }
    return laws;
  }

  private static void add(RuleText rule, PartKind kind, Map<PartKind, List<Law>> laws) {
    List<Property> signs =
        rule.conditionsOn(kind.recordType()).stream()
            .flatMap(name -> Property.of(kind, name).stream())
            .filter(Property::isSign)
            .toList();
    if (!signs.isEmpty()) {
      laws.computeIfAbsent(kind, one -> new ArrayList<>()).add(new Law(rule, signs));
    }
  }
}
