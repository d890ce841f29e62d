package org.brakerules.internal.engine;

import java.util.List;
import java.util.function.Function;
import org.brakerules.internal.rule.WrittenComparison;
import org.brakerules.internal.rule.WrittenCondition.AnyOf;
import org.brakerules.internal.rule.WrittenValue;
import org.drools.model.functions.HashedExpression;
import org.drools.model.functions.Predicate1;
import org.drools.model.functions.Predicate2;
import org.drools.model.functions.Predicate3;
import org.drools.model.functions.PredicateInformation;

/** Whether a condition of a rule holds; the engine asks with the variables the condition names. */
final class Holds
    implements Predicate1<Object>,
        Predicate2<Object, Object>,
        Predicate3<Object, Object, Object>,
        HashedExpression {

  private static final long serialVersionUID = 1L;

  private final transient Class<?> type;
  private final transient AnyOf condition;
  private final transient List<String> variables;
  private final transient One[] any;

  /** One comparison; its value is fixed, or that of a variable. */
  private record One(Function<Object, Object> reader, boolean equal, Object fixed, int variable) {

    boolean holds(Object fact, Object first, Object second) {
      Object wanted = variable < 0 ? fixed : variable == 0 ? first : second;
      return reader.apply(fact).equals(wanted) == equal;
    }
  }

  Holds(Class<?> type, AnyOf condition, List<String> variables) {
    this.type = type;
    this.condition = condition;
    this.variables = variables;
    this.any = condition.comparisons().stream().map(this::one).toArray(One[]::new);
  }

  private One one(WrittenComparison comparison) {
    Function<Object, Object> reader = FactReader.reader(type, comparison.property());
    WrittenValue value = comparison.value();
    int variable =
        value instanceof WrittenValue.Variable named ? variables.indexOf(named.name()) : -1;
    Object fixed =
        value instanceof WrittenValue.Constant constant
            ? constant.constant()
            : value instanceof WrittenValue.Text text ? text.text() : "";
    return new One(reader, comparison.equal(), fixed, variable);
  }

  @Override
  public boolean test(Object fact) {
    return test(fact, fact, fact);
  }

  @Override
  public boolean test(Object fact, Object one) {
    return test(fact, one, one);
  }

  @Override
  public boolean test(Object fact, Object one, Object other) {
    for (One comparison : any) {
      if (comparison.holds(fact, one, other)) {
        return true;
      }
    }
    return false;
  }

  @Override
  public PredicateInformation predicateInformation() {
    return new PredicateInformation(condition.toString(), "", "");
  }

  @Override
  public Holds negate() {
    throw new UnsupportedOperationException("Conditions are not negated by the engine.");
  }

  /** Two conditions that say the same of the same facts are one to the engine. */
  @Override
  public String getExpressionHash() {
    return type.getSimpleName() + "( " + condition + " )";
  }
}
