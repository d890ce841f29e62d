package org.brakerules.internal.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Enum constants by the names that tables, rule files and JSON use: lower case, hyphens. */
public final class Names {

  private Names() {}

  /** The name of a constant, such as {@code camshaft-out}. */
  public static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The names of all constants. */
  public static <E extends Enum<E>> List<String> all(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(Names::of).toList();
  }

  /** Finds a constant by its name. */
  public static <E extends Enum<E>> Optional<E> find(Class<E> type, String name) {
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> of(constant).equals(name))
        .findFirst();
  }
}
