package org.brakerules.linter.internal.base;

/** The quotes of typesetters, which mean nothing in a rule. */
public final class CurlyQuotes {

  private static final String SINGLE = "\u2018\u2019\u201A\u201B\u2039\u203A\u2032";
  private static final String DOUBLE = "\u201C\u201D\u201E\u201F\u00AB\u00BB\u2033";

  private CurlyQuotes() {}

  /** Whether one of them stands in a text. */
  public static boolean in(String text) {
    return text.chars().anyMatch(CurlyQuotes::is);
  }

  /** Whether a character is one of them. */
  public static boolean is(int character) {
    return isSingle(character) || DOUBLE.indexOf(character) >= 0;
  }

  /** Whether a character is a single one. */
  public static boolean isSingle(int character) {
    return SINGLE.indexOf(character) >= 0;
  }
}
