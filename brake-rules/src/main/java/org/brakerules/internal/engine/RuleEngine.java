package org.brakerules.internal.engine;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.text.NearestName;
import org.drools.model.Model;
import org.drools.model.Rule;

/** The compiled rules, ready to be asked by any number of threads. */
public final class RuleEngine {

  private final Map<String, RuleText> texts;
  private final List<RuleText> rules;
  private final Map<String, Rule> compiled;
  private final SessionPool sessions;
  private final Tables tables;

  private RuleEngine(List<Model> models, Tables tables) {
    this.tables = tables;
    this.texts = RuleTexts.of(models, tables);
    this.rules = List.copyOf(texts.values());
    this.compiled =
        models.stream()
            .flatMap(model -> model.getRules().stream())
            .collect(
                Collectors.toMap(
                    rule -> rule.getName().substring(0, rule.getName().indexOf(' ')),
                    rule -> rule));
    this.sessions = new SessionPool(CompiledRules.ruleBase(models));
  }

  /**
   * Loads the rules that the build compiled.
   *
   * @throws RuleBaseException if a rule names something the tables do not know
   */
  public static RuleEngine load(Tables tables) {
    return of(CompiledRules.models(), tables);
  }

  /** An engine over the given models; tests change the order of their rules. */
  static RuleEngine of(List<Model> models, Tables tables) {
    return new RuleEngine(models, tables);
  }

  /** Every rule, in the order of its id. */
  public List<RuleText> rules() {
    return rules;
  }

  /**
   * Asks the rules what they find in these facts.
   *
   * @throws RuleBaseException if a rule asks for an inspection point that does not exist
   */
  public List<Finding> fire(Collection<?> facts) {
    List<Finding> findings = sessions.fire(facts, texts);
    findings.forEach(this::checkPoint);
    return findings;
  }

  /**
   * How near these facts came to each condition of a rule.
   *
   * @throws IllegalArgumentException if there is no such rule
   */
  public WhyNot whyNot(String ruleId, Collection<?> facts) {
    Rule rule = compiled.get(ruleId);
    if (rule == null) {
      throw new IllegalArgumentException(
          "\""
              + ruleId
              + "\" is no rule of this rule base"
              + NearestName.of(ruleId, compiled.keySet())
                  .map(near -> "; did you mean \"" + near + "\"?")
                  .orElse("."));
    }
    return WhyNot.of(rule, facts);
  }

  private void checkPoint(Finding finding) {
    String point = finding.point();
    if (!point.isEmpty() && tables.points().find(point).isEmpty()) {
      throw new RuleBaseException(
          "Rule "
              + finding.rule().id()
              + " asks for the point \""
              + point
              + "\", which is in no table of points.");
    }
  }
}
