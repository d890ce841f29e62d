package org.brakerules.linter.internal.check;

import org.brakerules.linter.internal.base.Row;

/** Another row in a message: its line, and its file where it stands in another one. */
final class OtherLine {

  private OtherLine() {}

  static String inWords(Row other, Row here) {
    String line = "line " + other.spot().line();
    return other.spot().file().equals(here.spot().file())
        ? line
        : line + " of " + other.spot().file();
  }
}
