package org.brakerules.harness.batch;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/** The constants of an enum as JSON writes them: lower case, with hyphens. */
final class Names {

  private static final Map<Class<?>, Map<?, String>> BY_TYPE = new ConcurrentHashMap<>();

  private Names() {}

  static <E extends Enum<E>> String of(E constant) {
    Map<?, String> names =
        BY_TYPE.computeIfAbsent(
            constant.getDeclaringClass(), any -> namesOf(constant.getDeclaringClass()));
    return Objects.requireNonNull(names.get(constant));
  }

  private static <E extends Enum<E>> Map<E, String> namesOf(Class<E> type) {
    Map<E, String> names = new EnumMap<>(type);
    for (E constant : type.getEnumConstants()) {
      names.put(constant, constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
    return names;
  }
}
