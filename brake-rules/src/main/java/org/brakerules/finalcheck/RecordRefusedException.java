package org.brakerules.finalcheck;

import java.util.List;

/** A record that does not fit the job: it names a place or a check that the job does not have. */
public final class RecordRefusedException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final List<String> problems;

  /**
   * Refuses a record.
   *
   * @param problems every problem, each with what to write instead
   */
  public RecordRefusedException(List<String> problems) {
    super(String.join("\n", problems));
    this.problems = List.copyOf(problems);
  }

  /** Every problem, each with what to write instead. */
  public List<String> problems() {
    return problems;
  }
}
