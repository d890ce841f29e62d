package org.brakerules.harness;

/** What a command tells the shell. Of several the highest counts. */
enum ExitCode {
  /** Done, and nothing is left to do. */
  DONE(0),
  /** Done, and something is left to do. */
  WORK_LEFT(1),
  /** The command was not called as its help says. */
  WRONG_USAGE(2),
  /** A file does not hold what it should. */
  INVALID_INPUT(3),
  /** A file cannot be read, or the output cannot be written. */
  NO_ACCESS(4),
  /** A mistake in this program. */
  INTERNAL_FAILURE(70);

  private final int number;

  ExitCode(int number) {
    this.number = number;
  }

  int number() {
    return number;
  }

  /** The higher of two. */
  ExitCode or(ExitCode other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
