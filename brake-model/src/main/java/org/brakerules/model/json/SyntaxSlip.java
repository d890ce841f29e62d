package org.brakerules.model.json;

import java.util.List;

/**
 * A place where a document stops being JSON, in the words of people who write it by hand.
 *
 * @param document the document
 * @param offset the place, counted in characters from 0
 */
record SyntaxSlip(String document, int offset) {

  private static final String CURLY_QUOTES = "'\u2018\u2019\u201C\u201D\u00B4`";
  private static final List<String> NUMBER_WORDS = List.of("NaN", "Infinity");
  private static final int MOST_CHARACTERS = 20;

  /**
   * The slip at a place the parser names. It names the end of words that are numbers elsewhere; the
   * slip is at their beginning.
   */
  static SyntaxSlip at(String document, int offset) {
    boolean isInText = offset >= document.length() || document.charAt(offset) < ' ';
    return NUMBER_WORDS.stream()
        .filter(word -> !isInText && document.startsWith(word, offset - word.length()))
        .map(word -> new SyntaxSlip(document, offset - word.length()))
        .findFirst()
        .orElseGet(() -> new SyntaxSlip(document, offset));
  }

  /** What is there: the end, a word, or one character. */
  String found() {
    if (atEnd()) {
      return document.isBlank() ? "an empty document" : "the end of the document";
    }
    int end = offset;
    while (end < document.length()
        && end - offset < MOST_CHARACTERS
        && Character.isLetterOrDigit(document.charAt(end))) {
      end++;
    }
    return Shown.plain(document.substring(offset, Math.max(end, offset + 1)));
  }

  /** What to write instead. */
  String expected() {
    if (document.isBlank() || offset == 0) {
      return JobAssembly.JOB;
    }
    return atEnd()
        ? "the rest of it; a closing quote, bracket or brace is missing"
        : expected(document.charAt(offset), lastBefore());
  }

  private static String expected(char culprit, char before) {
    if (CURLY_QUOTES.indexOf(culprit) >= 0) {
      return "straight double quotes around names and texts";
    }
    if (culprit == '/' || culprit == '#') {
      return "no comment, since JSON has none";
    }
    if (culprit < ' ') {
      return "no line break, tab or other control character inside a text or name";
    }
    if ((culprit == '}' || culprit == ']') && before == ',') {
      return "no comma before a closing bracket or brace";
    }
    if (culprit == '"' && before != ',' && before != '{' && before != '[') {
      return "a comma before the next field or value";
    }
    if (Character.isLetter(culprit) && (before == ':' || before == '-')) {
      return "a text in double quotes, a number, an object or an array";
    }
    return before == '\\'
        ? "\\\\ for a backslash in a text"
        : "JSON; a quote, comma, colon, bracket or brace is missing or one too many here";
  }

  private boolean atEnd() {
    return offset >= document.length();
  }

  /** The last character before the place that is no blank. */
  private char lastBefore() {
    int at = offset - 1;
    while (at >= 0 && Character.isWhitespace(document.charAt(at))) {
      at--;
    }
    return at < 0 ? ' ' : document.charAt(at);
  }
}
