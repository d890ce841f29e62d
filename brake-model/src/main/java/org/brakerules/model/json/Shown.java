package org.brakerules.model.json;

import java.util.Collection;
import java.util.Iterator;

/** Shows parts of a document in messages: short, and on one line whatever is in them. */
final class Shown {

  private static final int MOST_CHARACTERS = 60;

  private Shown() {}

  /** The text in quotes, its end left out if it is long. */
  static String quoted(String text) {
    boolean isShort = text.length() <= MOST_CHARACTERS;
    String start = isShort ? text : text.substring(0, MOST_CHARACTERS) + "...";
    return '"' + plain(start) + '"';
  }

  /** The text with everything that cannot be seen, or would break the line, escaped. */
  static String plain(String text) {
    if (isVisible(text)) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints().forEach(character -> append(shown, character));
    return shown.toString();
  }

  /** The names in quotes: {@code "left" or "right"}. */
  static String oneOf(Collection<String> names) {
    StringBuilder shown = new StringBuilder();
    Iterator<String> rest = names.iterator();
    while (rest.hasNext()) {
      String name = quoted(rest.next());
      String before = shown.isEmpty() ? "" : rest.hasNext() ? ", " : " or ";
      shown.append(before).append(name);
    }
    return shown.toString();
  }

  /** Whether every character takes its place on the line and nothing else. */
  static boolean isVisible(String text) {
    int place = 0;
    while (place < text.length()) {
      int character = text.codePointAt(place);
      if (!isVisible(character)) {
        return false;
      }
      place += Character.charCount(character);
    }
    return true;
  }

  /** Whether the character takes its place on the line and nothing else. */
  private static boolean isVisible(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE,
          Character.UNASSIGNED ->
          false;
      default -> true;
    };
  }

  private static void append(StringBuilder shown, int character) {
    if (isVisible(character)) {
      shown.appendCodePoint(character);
    } else {
      shown.append("\\u{").append(Integer.toHexString(character)).append('}');
    }
  }
}
