package org.brakerules.internal.table;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Enum constants by the names that tables, rule files and JSON use: lower case, hyphens. */
public final class Names {

  private static final String NOT_STATED = "unknown";

  /** Tables and decisions ask for names so often that none is made twice. */
  private static final ClassValue<Names> KNOWN =
      new ClassValue<>() {
        @Override
        protected Names computeValue(Class<?> type) {
          return new Names(type.getEnumConstants());
        }
      };

  private final Map<Object, String> names = new HashMap<>();
  private final Map<Object, Optional<String>> stated = new HashMap<>();
  private final Map<String, Object> constants = new LinkedHashMap<>();
  private final List<String> all;

  private Names(Object[] constants) {
    for (Object constant : constants) {
      String name = ((Enum<?>) constant).name().toLowerCase(Locale.ROOT).replace('_', '-');
      names.put(constant, name);
      stated.put(constant, name.equals(NOT_STATED) ? Optional.empty() : Optional.of(name));
      this.constants.put(name, constant);
    }
    all = List.copyOf(this.constants.keySet());
  }

  /** The name of a constant, such as {@code camshaft-out}. */
  public static String of(Enum<?> constant) {
    return Objects.requireNonNull(KNOWN.get(constant.getDeclaringClass()).names.get(constant));
  }

  /** The name of a constant that states something; empty for {@code unknown}. */
  public static Optional<String> stated(Enum<?> constant) {
    return Objects.requireNonNull(KNOWN.get(constant.getDeclaringClass()).stated.get(constant));
  }

  /** The names of all constants. */
  public static <E extends Enum<E>> List<String> all(Class<E> type) {
    return ofAll(type);
  }

  /** The names of all constants of a type, none if it is no closed list. */
  static List<String> ofAll(Class<?> type) {
    return type.isEnum() ? KNOWN.get(type).all : List.of();
  }

  /** Finds a constant by its name. */
  public static <E extends Enum<E>> Optional<E> find(Class<E> type, String name) {
    return Optional.ofNullable(type.cast(KNOWN.get(type).constants.get(name)));
  }
}
