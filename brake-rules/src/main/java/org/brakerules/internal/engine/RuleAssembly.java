package org.brakerules.internal.engine;

import static org.drools.model.PatternDSL.alphaIndexedBy;
import static org.drools.model.PatternDSL.betaIndexedBy;
import static org.drools.model.PatternDSL.pattern;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.internal.fact.Verdicts;
import org.brakerules.internal.rule.WrittenComparison;
import org.brakerules.internal.rule.WrittenCondition;
import org.brakerules.internal.rule.WrittenCondition.AnyOf;
import org.brakerules.internal.rule.WrittenCondition.Named;
import org.brakerules.internal.rule.WrittenPattern;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.rule.WrittenValue;
import org.brakerules.model.part.Part;
import org.drools.model.DSL;
import org.drools.model.Global;
import org.drools.model.Index.ConstraintType;
import org.drools.model.Model;
import org.drools.model.PatternDSL;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.Rule;
import org.drools.model.RuleItemBuilder;
import org.drools.model.Variable;
import org.drools.model.functions.Predicate1;
import org.drools.model.impl.ModelImpl;

/**
 * Makes a rule the engine runs out of one that was taken apart, in the form the rule compiler would
 * have made. No compiler is needed, so rules can be tried on a plain Java run time.
 */
final class RuleAssembly {

  private static final String PACKAGE = "org.brakerules.rules";
  private static final Global<Verdicts> VERDICT = DSL.globalOf(Verdicts.class, PACKAGE, "verdict");

  private final WrittenRule rule;
  private final Map<String, Variable<Object>> variables = new HashMap<>();

  private RuleAssembly(WrittenRule rule) {
    this.rule = rule;
  }

  /** A model of all rules, which the engine takes as if it had been compiled. */
  static Model model(List<WrittenRule> rules) {
    ModelImpl model = new ModelImpl(PACKAGE);
    model.addGlobal(VERDICT);
    rules.forEach(rule -> model.addRule(new RuleAssembly(rule).assemble()));
    return model;
  }

  private Rule assemble() {
    List<RuleItemBuilder<?>> items = new ArrayList<>();
    for (WrittenPattern one : rule.patterns()) {
      PatternDef<Object> assembled = assemble(one, "$fact" + items.size());
      items.add(one.negated() ? DSL.not(assembled) : assembled);
    }
    Variable<Object> part = variable(rule.action().variable());
    items.add(
        DSL.on(VERDICT, part)
            .execute((verdicts, found) -> rule.action().speak(verdicts, (Part) found)));
    return PatternDSL.rule(PACKAGE, rule.name())
        .metadata("source", text("source"))
        .metadata("because", text("because"))
        .metadata("action", text("action"))
        .build(items.toArray(RuleItemBuilder[]::new));
  }

  private String text(String key) {
    return rule.metadata().getOrDefault(key, "");
  }

  private PatternDef<Object> assemble(WrittenPattern one, String unnamed) {
    Variable<Object> fact = declare(one.type(), one.variable().orElse(unnamed));
    PatternDef<Object> assembled = pattern(fact);
    for (WrittenCondition condition : one.conditions()) {
      if (condition instanceof Named named) {
        String property = named.property();
        Variable<Object> value = declare(FactReader.type(one.type(), property), named.variable());
        assembled = assembled.bind(value, Getter.of(one.type(), property));
      } else {
        assembled = compare(assembled, one.type(), (AnyOf) condition);
      }
    }
    return assembled;
  }

  private PatternDef<Object> compare(PatternDef<Object> assembled, Class<?> type, AnyOf condition) {
    List<String> names =
        condition.comparisons().stream()
            .map(WrittenComparison::value)
            .filter(WrittenValue.Variable.class::isInstance)
            .map(value -> ((WrittenValue.Variable) value).name())
            .distinct()
            .toList();
    Holds holds = new Holds(type, condition, names);
    String id = holds.getExpressionHash();
    return switch (names.size()) {
      case 0 -> alone(assembled, type, condition, holds);
      case 1 -> joined(assembled, type, condition, holds, variable(names.get(0)));
      case 2 -> assembled.expr(id, variable(names.get(0)), variable(names.get(1)), holds);
      default ->
          throw new IllegalArgumentException(rule.id() + " compares with too much: " + condition);
    };
  }

  /** A single text is indexed: where the engine looks for the id of a limit it finds it at once. */
  private static PatternDef<Object> alone(
      PatternDef<Object> assembled, Class<?> type, AnyOf condition, Holds holds) {
    String id = holds.getExpressionHash();
    WrittenComparison first = condition.comparisons().get(0);
    if (isOneEquality(condition) && first.value() instanceof WrittenValue.Text text) {
      return assembled.expr(
          id,
          (Predicate1<Object>) holds,
          alphaIndexedBy(
              String.class,
              ConstraintType.EQUAL,
              -1,
              Getter.ofText(type, first.property()),
              text.text()));
    }
    return assembled.expr(id, (Predicate1<Object>) holds);
  }

  /** Joins are indexed as well, so that the engine does not try every pair of facts. */
  private static PatternDef<Object> joined(
      PatternDef<Object> assembled,
      Class<?> type,
      AnyOf condition,
      Holds holds,
      Variable<Object> other) {
    String id = holds.getExpressionHash();
    WrittenComparison first = condition.comparisons().get(0);
    return isOneEquality(condition)
        ? assembled.expr(
            id,
            other,
            holds,
            betaIndexedBy(
                Object.class,
                ConstraintType.EQUAL,
                0,
                Getter.of(type, first.property()),
                Getter.itself()))
        : assembled.expr(id, other, holds);
  }

  private static boolean isOneEquality(AnyOf condition) {
    return condition.comparisons().size() == 1 && condition.comparisons().get(0).equal();
  }

  @SuppressWarnings("unchecked") // the engine only asks for the class it is declared with
  private Variable<Object> declare(Class<?> type, String name) {
    Variable<Object> declared = (Variable<Object>) DSL.declarationOf(type, name);
    variables.put(name, declared);
    return declared;
  }

  private Variable<Object> variable(String name) {
    Variable<Object> known = variables.get(name);
    if (known == null) {
      throw new IllegalArgumentException(rule.id() + " names no " + name + ".");
    }
    return known;
  }
}
