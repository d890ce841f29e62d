package org.brakerules.harness;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Locale;
import java.util.function.LongSupplier;
import org.brakerules.harness.batch.Progress;
import picocli.CommandLine.Help.Ansi;

/**
 * Shows how far a batch has come, how fast it is and how long it still takes: a bar on a terminal,
 * else a plain line now and then.
 */
final class BatchProgress implements Progress {

  private static final int WIDTH = 30;
  private static final String START_OF_LINE = "\r";
  private static final String CLEAR_LINE = "\u001b[2K";
  private static final long BAR_EVERY = Duration.ofMillis(200).toNanos();
  private static final long LINE_EVERY = Duration.ofSeconds(10).toNanos();

  private final PrintWriter err;
  private final boolean isBar;
  private final long size;
  private final long linesBefore;
  private final LongSupplier clock;
  private final long start;
  private long shown;

  /**
   * Starts the clock.
   *
   * @param isBar whether somebody looks at a terminal
   * @param size the size of the input in bytes; 0 if nobody knows
   * @param linesBefore lines that were done before
   * @param clock tells nanoseconds
   */
  BatchProgress(PrintWriter err, boolean isBar, long size, long linesBefore, LongSupplier clock) {
    this.err = err;
    this.isBar = isBar;
    this.size = size;
    this.linesBefore = linesBefore;
    this.clock = clock;
    this.start = clock.getAsLong();
    this.shown = start;
  }

  /** On standard error. */
  static BatchProgress on(Terminal terminal, long size, long linesBefore) {
    return new BatchProgress(
        terminal.err(), Ansi.AUTO.enabled(), size, linesBefore, System::nanoTime);
  }

  @Override
  public void at(long lines, long position) {
    long now = clock.getAsLong();
    if (now - shown < (isBar ? BAR_EVERY : LINE_EVERY)) {
      return;
    }
    shown = now;
    String words = inWords(lines, position, now - start);
    if (isBar) {
      err.print(START_OF_LINE + CLEAR_LINE + bar(position) + words);
    } else {
      err.println(words);
    }
    err.flush();
  }

  /** Nothing more comes; the line is free. */
  void end() {
    if (isBar) {
      err.print(START_OF_LINE + CLEAR_LINE);
      err.flush();
    }
  }

  private String bar(long position) {
    if (size == 0) {
      return "";
    }
    int filled = (int) (WIDTH * Math.min(position, size) / size);
    return "[" + "#".repeat(filled) + ".".repeat(WIDTH - filled) + "] ";
  }

  private String inWords(long lines, long position, long nanoseconds) {
    double seconds = nanoseconds / 1e9;
    double rate = (lines - linesBefore) / seconds;
    String words = String.format(Locale.ROOT, "%d lines, %.0f a second", lines, rate);
    if (size == 0 || position == 0 || lines == linesBefore) {
      return words;
    }
    long left = Math.round(lines * (double) (size - position) / position / rate);
    long percent = 100 * Math.min(position, size) / size;
    return words + ", " + percent + " %, " + time(left) + " left";
  }

  private static String time(long seconds) {
    Duration time = Duration.ofSeconds(Math.max(0, seconds));
    return time.toHours() > 0
        ? String.format(Locale.ROOT, "%d h %02d min", time.toHours(), time.toMinutesPart())
        : String.format(Locale.ROOT, "%d min %02d s", time.toMinutes(), time.toSecondsPart());
  }
}
