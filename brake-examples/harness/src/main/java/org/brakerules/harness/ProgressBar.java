package org.brakerules.harness;

import java.io.PrintWriter;
import picocli.CommandLine.Help.Ansi;

/** Shows how far long work has come, on a terminal only: a file or a pipe has no use for it. */
final class ProgressBar {

  private static final int WIDTH = 30;
  private static final String START_OF_LINE = "\r";
  private static final String CLEAR_LINE = "\u001b[2K";

  private final PrintWriter err;
  private final boolean isShown;
  private final int total;
  private int done;

  ProgressBar(PrintWriter err, boolean isShown, int total) {
    this.err = err;
    this.isShown = isShown;
    this.total = total;
  }

  /** A bar on standard error, if somebody looks at it. */
  static ProgressBar on(Terminal terminal, int total) {
    return new ProgressBar(terminal.err(), Ansi.AUTO.enabled(), total);
  }

  /** Says what is worked on now. */
  void at(String name) {
    if (isShown) {
      int filled = WIDTH * done / total;
      String bar = "#".repeat(filled) + ".".repeat(WIDTH - filled);
      err.printf("%s%s[%s] %d of %d: %s", START_OF_LINE, CLEAR_LINE, bar, done, total, name);
      err.flush();
    }
  }

  /** One more is done; the line is free for what it came to. */
  void oneDone() {
    done++;
    if (isShown) {
      err.print(START_OF_LINE + CLEAR_LINE);
      err.flush();
    }
  }
}
