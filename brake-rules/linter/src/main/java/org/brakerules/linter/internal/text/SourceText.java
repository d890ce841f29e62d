package org.brakerules.linter.internal.text;

import java.util.List;

/**
 * A file as it was written.
 *
 * @param file the file, relative to the resources
 * @param text what it holds, lines ended by a line feed
 */
public record SourceText(String file, String text) {

  /** Ends every line with a line feed alone. */
  public SourceText {
    text = text.replace("\r\n", "\n");
  }

  /** The place of a character. */
  public Spot spot(int offset) {
    int lineStart = text.lastIndexOf('\n', offset - 1) + 1;
    int line = 1 + (int) text.substring(0, lineStart).chars().filter(c -> c == '\n').count();
    return new Spot(file, line, offset - lineStart + 1);
  }

  /** Where a line starts; the end of the file if there is no such line. */
  public int lineStart(int line) {
    int offset = 0;
    for (int before = 1; before < line; before++) {
      int end = text.indexOf('\n', offset);
      if (end < 0) {
        return text.length();
      }
      offset = end + 1;
    }
    return offset;
  }

  /** The lines, without their ends. */
  public List<String> lines() {
    return List.of(text.split("\n", -1));
  }

  /** Whether nothing but blanks stands before this character on its line. */
  public boolean startsLine(int offset) {
    return text.substring(text.lastIndexOf('\n', offset - 1) + 1, offset).isBlank();
  }
}
