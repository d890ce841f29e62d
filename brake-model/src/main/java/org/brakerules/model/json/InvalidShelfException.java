package org.brakerules.model.json;

import java.util.List;
import java.util.stream.Collectors;

/** A document is no shelf of kits. The message has one line for each problem. */
public final class InvalidShelfException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // an unmodifiable list of records, both serializable
  private final List<Problem> problems;

  InvalidShelfException(List<Problem> problems) {
    super(problems.stream().map(Problem::message).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /** Everything that is wrong, from the first line to the last; never empty. */
  public List<Problem> problems() {
    return problems;
  }
}
