package org.brakerules.internal.engine;

import java.lang.invoke.CallSite;
import java.lang.invoke.LambdaMetafactory;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** The properties of facts by their names, which rule files use as the records do. */
public final class FactReader {

  private record Name(Class<?> type, String property) {}

  private static final Map<Name, Function<Object, Object>> KNOWN = new HashMap<>();

  private FactReader() {}

  /** The class of a property. */
  static Class<?> type(Class<?> fact, String property) {
    try {
      return fact.getMethod(property).getReturnType();
    } catch (NoSuchMethodException e) {
      throw new IllegalArgumentException(fact.getSimpleName() + " has no " + property + ".", e);
    }
  }

  /** Reads a property; as fast as a call, because rules do little else. */
  public static synchronized Function<Object, Object> reader(Class<?> fact, String property) {
    return KNOWN.computeIfAbsent(new Name(fact, property), FactReader::make);
  }

  @SuppressWarnings("unchecked")
  private static Function<Object, Object> make(Name name) {
    MethodHandles.Lookup lookup = MethodHandles.lookup();
    Class<?> returns = type(name.type(), name.property());
    try {
      MethodHandle getter =
          lookup.findVirtual(name.type(), name.property(), MethodType.methodType(returns));
      CallSite site =
          LambdaMetafactory.metafactory(
              lookup,
              "apply",
              MethodType.methodType(Function.class),
              MethodType.methodType(Object.class, Object.class),
              getter,
              MethodType.methodType(returns, name.type()));
      return (Function<Object, Object>) site.getTarget().invoke();
    } catch (Throwable e) {
      throw new IllegalStateException("Cannot read " + name, e);
    }
  }
}
