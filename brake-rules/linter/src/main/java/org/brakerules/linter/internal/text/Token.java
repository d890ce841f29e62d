package org.brakerules.linter.internal.text;

/**
 * The smallest piece of a rule file that means something.
 *
 * @param kind what it is
 * @param text as written, quotes included
 * @param offset where it starts in the file
 */
public record Token(Kind kind, String text, int offset) {

  /** What a token is. */
  public enum Kind {
    NAME,
    /** Between double quotes, on one line. */
    TEXT,
    /** Between single quotes, on one line. */
    SINGLE_QUOTED,
    /** From a quote that is not closed on its line to the end of the line. */
    UNCLOSED,
    NUMBER,
    COMMENT,
    SYMBOL
  }

  /** Whether the token is of a kind. */
  public boolean is(Kind other) {
    return kind == other;
  }

  /** Whether the token is this name or symbol. */
  public boolean is(String word) {
    return (kind == Kind.NAME || kind == Kind.SYMBOL) && text.equals(word);
  }

  /** Whether the token names a variable. */
  public boolean isVariable() {
    return kind == Kind.NAME && text.startsWith("$");
  }

  /** The token without its quotes. */
  public String value() {
    return switch (kind) {
      case TEXT, SINGLE_QUOTED -> text.substring(1, text.length() - 1);
      case UNCLOSED -> text.substring(1);
      default -> text;
    };
  }

  /** Where the value starts in the file. */
  public int valueOffset() {
    return value().length() < text.length() ? offset + 1 : offset;
  }

  /** Where the next character after the token stands. */
  public int end() {
    return offset + text.length();
  }
}
