package org.brakerules.linter.internal.language;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The names of constants as tables write them: lower case, with hyphens. */
public final class Words {

  /** What a table never asks for: it is what is not stated. */
  private static final String UNKNOWN = "unknown";

  private Words() {}

  /** The name of a constant, such as {@code camshaft-out}. */
  public static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The names of all constants of a type that a table may ask for, in its order. */
  public static List<String> all(Class<?> type) {
    return Arrays.stream(type.getEnumConstants())
        .map(constant -> of((Enum<?>) constant))
        .filter(word -> !word.equals(UNKNOWN))
        .toList();
  }

  /** The name of a property as ids write it, such as {@code radial-play}. */
  public static String ofProperty(String property) {
    return property.replaceAll("(\\p{Lu})", "-$1").toLowerCase(Locale.ROOT);
  }
}
