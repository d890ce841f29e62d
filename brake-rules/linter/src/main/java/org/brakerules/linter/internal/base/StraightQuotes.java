package org.brakerules.linter.internal.base;

import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.brakerules.linter.internal.text.SourceText;

/**
 * One line of a rule file, its curly quotes read as the straight ones that were meant. So a curly
 * quote does not hide what else is wrong with its rule. Every character keeps its place.
 */
final class StraightQuotes {

  private static final char NONE = 0;

  /** What stands behind a text that is over. */
  private static final Pattern TEXT_IS_OVER = Pattern.compile("\\s*(?:[),;|&].*)?");

  private final String line;
  private char opener = NONE;
  private char closer = NONE;

  private StraightQuotes(String line) {
    this.line = line;
  }

  static SourceText in(SourceText source) {
    return new SourceText(
        source.file(),
        source.lines().stream()
            .map(line -> CurlyQuotes.in(line) ? new StraightQuotes(line).read() : line)
            .collect(Collectors.joining("\n")));
  }

  private String read() {
    StringBuilder read = new StringBuilder();
    for (int at = 0; at < line.length(); at++) {
      boolean escaped = at > 0 && line.charAt(at - 1) == '\\';
      read.append(!escaped && isQuote(line.charAt(at)) ? straight(at) : line.charAt(at));
    }
    return read.toString();
  }

  private char straight(int at) {
    char written = line.charAt(at);
    if (closer == NONE) {
      opener = written;
      closer = written == '\'' ? '\'' : '"';
      return closer;
    }
    if (written == closer || closes(at)) {
      char straight = closer;
      closer = NONE;
      return straight;
    }
    // An apostrophe breaks no text; a double quote would, and stays as it is.
    return CurlyQuotes.isSingle(written) && closer == '"' ? '\'' : written;
  }

  /** A curly quote inside a text may be meant for its end or for a word in quotes. */
  private boolean closes(int at) {
    char written = line.charAt(at);
    return CurlyQuotes.is(written)
        && isSingle(written) == isSingle(opener)
        && (CurlyQuotes.is(opener) || line.indexOf(closer, at) < 0)
        && TEXT_IS_OVER.matcher(line.substring(at + 1)).matches();
  }

  private static boolean isQuote(char written) {
    return written == '"' || written == '\'' || CurlyQuotes.is(written);
  }

  private static boolean isSingle(char quote) {
    return quote == '\'' || CurlyQuotes.isSingle(quote);
  }
}
