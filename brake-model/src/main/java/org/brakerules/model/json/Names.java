package org.brakerules.model.json;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The names of an enum's constants in JSON: lower case, with hyphens, such as {@code not-seen}.
 *
 * @param <E> the enum
 */
final class Names<E extends Enum<E>> {

  private static final Map<Class<?>, Names<?>> BY_TYPE = new ConcurrentHashMap<>();

  private final Map<String, E> constants = new LinkedHashMap<>();
  private final Map<E, String> names = new LinkedHashMap<>();
  private final List<String> all;

  private Names(Collection<E> allowed) {
    for (E constant : allowed) {
      String name = constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
      constants.put(name, constant);
      names.put(constant, name);
    }
    all = List.copyOf(names.values());
  }

  /** The names of all constants. */
  @SuppressWarnings("unchecked") // the names of a type are filed under that type
  static <E extends Enum<E>> Names<E> of(Class<E> type) {
    return (Names<E>)
        BY_TYPE.computeIfAbsent(type, key -> new Names<>(Arrays.asList(type.getEnumConstants())));
  }

  /** The names of some constants. */
  static <E extends Enum<E>> Names<E> of(Collection<E> allowed) {
    return new Names<>(allowed);
  }

  /** The name of one constant. */
  static <E extends Enum<E>> String of(E constant) {
    return Objects.requireNonNull(of(constant.getDeclaringClass()).names.get(constant));
  }

  /** The constant of this name; empty if there is none. */
  Optional<E> constant(String name) {
    return Optional.ofNullable(constants.get(name));
  }

  /** All names, in the order of the constants. */
  List<String> all() {
    return all;
  }
}
