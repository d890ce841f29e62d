package org.brakerules;

import java.util.List;

/**
 * A job this rule base cannot decide, because it names something the rule base does not know: a
 * rule set, or a limit that its maker's limit should replace.
 */
public final class JobRefusedException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final List<String> problems;

  /**
   * Refuses a job.
   *
   * @param problems every problem, each with what to write instead
   */
  public JobRefusedException(List<String> problems) {
    super(String.join("\n", problems));
    this.problems = List.copyOf(problems);
  }

  /** Every problem, each with what to write instead. */
  public List<String> problems() {
    return problems;
  }
}
