package org.brakerules.harness.batch;

/** Is told how far a run has come. */
public interface Progress {

  /**
   * Some more lines are written.
   *
   * @param lines the lines read, decided or rejected, from the beginning of the input
   * @param position how many bytes of the input file that took
   */
  void at(long lines, long position);

  /** Nobody wants to know. */
  static Progress unseen() {
    return (lines, position) -> {};
  }
}
