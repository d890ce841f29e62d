package org.brakerules.linter.internal.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.linter.internal.text.Token.Kind;

/** Cuts a text into tokens. Every character that is no blank belongs to one. */
public final class Tokens {

  private record Shape(Kind kind, Pattern pattern) {
    Shape(Kind kind, String pattern) {
      this(kind, Pattern.compile(pattern));
    }
  }

  // The first that fits counts, so the longer ones come first.
  private static final List<Shape> SHAPES =
      List.of(
          new Shape(Kind.COMMENT, "//[^\n]*|(?s:/\\*.*?(?:\\*/|\\z))"),
          new Shape(Kind.TEXT, "\"(?:[^\"\\\\\n]++|\\\\.)*+\""),
          new Shape(Kind.SINGLE_QUOTED, "'(?:[^'\\\\\n]++|\\\\.)*+'"),
          new Shape(Kind.UNCLOSED, "[\"'][^\n]*"),
          new Shape(Kind.NUMBER, "\\d[\\w.]*"),
          new Shape(Kind.NAME, "[\\p{L}_$][\\p{L}\\p{N}_$]*"),
          new Shape(Kind.SYMBOL, "==|!=|<=|>=|&&|\\|\\||:=|(?s:.)"));

  private Tokens() {}

  /** The tokens of a whole text. */
  public static List<Token> of(String text) {
    return of(text, 0);
  }

  /**
   * The tokens of a piece of a file.
   *
   * @param text the piece
   * @param start where it starts in the file
   */
  public static List<Token> of(String text, int start) {
    List<Token> tokens = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      if (Character.isWhitespace(text.charAt(at))) {
        at++;
      } else {
        Token token = next(text, at, start);
        tokens.add(token);
        at += token.text().length();
      }
    }
    return List.copyOf(tokens);
  }

  private static Token next(String text, int at, int start) {
    for (Shape shape : SHAPES) {
      Matcher matcher = shape.pattern.matcher(text).region(at, text.length());
      if (matcher.lookingAt()) {
        return new Token(shape.kind, matcher.group(), start + at);
      }
    }
    throw new IllegalStateException("No token at " + at);
  }
}
