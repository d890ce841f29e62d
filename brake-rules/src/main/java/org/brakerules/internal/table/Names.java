package org.brakerules.internal.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Enum constants by the names that tables, rule files and JSON use: lower case, hyphens. */
public final class Names {

  private static final String NOT_STATED = "unknown";

  /** Decisions ask for names so often that none is made twice. */
  private static final ClassValue<Map<Object, String>> NAMES =
      new ClassValue<>() {
        @Override
        protected Map<Object, String> computeValue(Class<?> type) {
          return Arrays.stream(type.getEnumConstants())
              .collect(Collectors.toMap(one -> one, one -> written((Enum<?>) one)));
        }
      };

  private static final ClassValue<Map<Object, Optional<String>>> STATED =
      new ClassValue<>() {
        @Override
        protected Map<Object, Optional<String>> computeValue(Class<?> type) {
          return Arrays.stream(type.getEnumConstants())
              .collect(
                  Collectors.toMap(
                      one -> one,
                      one ->
                          Optional.of(written((Enum<?>) one))
                              .filter(name -> !name.equals(NOT_STATED))));
        }
      };

  private Names() {}

  /** The name of a constant, such as {@code camshaft-out}. */
  public static String of(Enum<?> constant) {
    return Objects.requireNonNull(NAMES.get(constant.getDeclaringClass()).get(constant));
  }

  /** The name of a constant that states something; empty for {@code unknown}. */
  public static Optional<String> stated(Enum<?> constant) {
    return Objects.requireNonNull(STATED.get(constant.getDeclaringClass()).get(constant));
  }

  private static String written(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The names of all constants. */
  public static <E extends Enum<E>> List<String> all(Class<E> type) {
    return ofAll(type);
  }

  /** The names of all constants of a type, none if it is no closed list. */
  static List<String> ofAll(Class<?> type) {
    return type.isEnum()
        ? Arrays.stream(type.getEnumConstants()).map(one -> of((Enum<?>) one)).toList()
        : List.of();
  }

  /** Finds a constant by its name. */
  public static <E extends Enum<E>> Optional<E> find(Class<E> type, String name) {
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> of(constant).equals(name))
        .findFirst();
  }
}
