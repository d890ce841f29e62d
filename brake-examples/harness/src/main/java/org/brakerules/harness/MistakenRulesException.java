package org.brakerules.harness;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.linter.LintProblem;

/** Rules that cannot be tried, because something is wrong with them or with their cases. */
final class MistakenRulesException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // an unmodifiable list of texts
  private final List<String> lines;

  MistakenRulesException(String message) {
    this(List.of(message));
  }

  private MistakenRulesException(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = lines;
  }

  /** What the linter found in a folder, each problem on its line, as the linter tells it. */
  static MistakenRulesException of(Path folder, List<LintProblem> problems) {
    String count =
        "%s: %s; mend %s first"
            .formatted(
                folder,
                Counted.of(problems.size(), "problem"),
                problems.size() == 1 ? "it" : "them");
    return new MistakenRulesException(
        Stream.concat(problems.stream().map(LintProblem::toString), Stream.of(count)).toList());
  }

  /** The message, line by line. */
  List<String> lines() {
    return lines;
  }
}
