package org.brakerules.internal.engine;

import java.util.function.Function;
import org.drools.model.functions.Function1;
import org.drools.model.functions.HashedExpression;

/**
 * Reads a property where the engine wants one: for a variable, or to look facts up by it. Its hash
 * tells the engine which of them are the same, so that rules share what they have in common.
 */
final class Getter<T> implements Function1<Object, T>, HashedExpression {

  private static final long serialVersionUID = 1L;

  private final transient Function<Object, T> reader;
  private final String hash;

  private Getter(Function<Object, T> reader, String hash) {
    this.reader = reader;
    this.hash = hash;
  }

  static Getter<Object> of(Class<?> fact, String property) {
    return new Getter<>(FactReader.reader(fact, property), fact.getSimpleName() + "." + property);
  }

  static Getter<String> ofText(Class<?> fact, String property) {
    return new Getter<>(
        FactReader.reader(fact, property).andThen(String.class::cast),
        fact.getSimpleName() + "." + property);
  }

  /** A variable stands for its own value. */
  static Getter<Object> itself() {
    return new Getter<>(value -> value, "itself");
  }

  @Override
  public T apply(Object fact) {
    return reader.apply(fact);
  }

  @Override
  public String getExpressionHash() {
    return hash;
  }
}
