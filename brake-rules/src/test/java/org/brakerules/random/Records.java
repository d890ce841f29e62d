package org.brakerules.random;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** Records of the model, read and built component by component. */
public final class Records {

  private static final Map<Class<?>, List<RecordComponent>> COMPONENTS = new ConcurrentHashMap<>();

  private Records() {}

  /** The components of a record; Java makes them anew at each call, so they are kept. */
  public static List<RecordComponent> components(Class<?> type) {
    return COMPONENTS.computeIfAbsent(type, one -> List.of(one.getRecordComponents()));
  }

  /** Builds a record from what a function gives for each component. */
  public static <R> R build(Class<R> type, Function<RecordComponent, Object> valueOf) {
    Object[] values = components(type).stream().map(valueOf).toArray();
    try {
      return type.cast(type.getConstructors()[0].newInstance(values));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("Cannot build " + type, e);
    }
  }

  /** The same record with one component changed. */
  public static <R> R with(R record, String component, Object value) {
    return mapped(record, (name, old) -> name.getName().equals(component) ? value : old);
  }

  /** The same record with every component put through a function. */
  public static <R> R mapped(R record, Mapping mapping) {
    @SuppressWarnings("unchecked") // the class of an object is a class of its type
    Class<R> type = (Class<R>) record.getClass();
    return build(type, component -> mapping.apply(component, valueOf(record, component)));
  }

  /** The value of a component. */
  public static Object valueOf(Object record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("Cannot read " + component, e);
    }
  }

  /** The value of the component of this name. */
  public static Object valueOf(Object record, String name) {
    return components(record.getClass()).stream()
        .filter(component -> component.getName().equals(name))
        .findFirst()
        .map(component -> valueOf(record, component))
        .orElseThrow(() -> new IllegalArgumentException(record.getClass() + " has no " + name));
  }

  /** The class between the angle brackets of a component such as {@code Measurement<Length>}. */
  static Class<?> argument(RecordComponent component) {
    return (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
  }

  /** Gives the new value of a component from its old one. */
  @FunctionalInterface
  public interface Mapping {
    /** The new value. */
    Object apply(RecordComponent component, Object old);
  }
}
