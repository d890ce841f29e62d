package org.brakerules.model.part;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.brakerules.model.reading.Measurement;

/** Parts of which nothing is stated but the tag: where every builder starts. */
final class Blank {

  private static final Map<Class<?>, Constructor<?>> CONSTRUCTORS = new ConcurrentHashMap<>();

  private Blank() {}

  static <P extends Part> P of(Class<P> type, Tag tag) {
    Constructor<?> constructor = CONSTRUCTORS.computeIfAbsent(type, Blank::canonicalConstructor);
    Object[] values =
        Arrays.stream(constructor.getParameterTypes()).map(one -> unstated(one, tag)).toArray();
    try {
      return type.cast(constructor.newInstance(values));
    } catch (ReflectiveOperationException e) {
      throw new IllegalArgumentException("No " + type.getSimpleName() + " for " + tag.place(), e);
    }
  }

  private static Constructor<?> canonicalConstructor(Class<?> type) {
    Class<?>[] components =
        Arrays.stream(type.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    try {
      return type.getConstructor(components);
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException(type + " is no public record.", e);
    }
  }

  private static Object unstated(Class<?> type, Tag tag) {
    if (type == Tag.class) {
      return tag;
    }
    if (type == Measurement.class) {
      return Measurement.notTaken();
    }
    if (type == Sign.class) {
      return Sign.NOT_CHECKED;
    }
    if (type == String.class) {
      return "";
    }
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> ((Enum<?>) constant).name().equals("UNKNOWN"))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(type + " has no UNKNOWN."));
  }
}
