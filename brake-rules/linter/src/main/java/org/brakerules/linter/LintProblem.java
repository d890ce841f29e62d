package org.brakerules.linter;

import java.util.Comparator;

/**
 * One thing wrong with the rule base.
 *
 * @param file the file, relative to the resources, with forward slashes
 * @param line the line, from 1
 * @param column the column, from 1
 * @param rule the id of the rule; empty if the problem lies outside a rule
 * @param kind what kind of problem it is
 * @param message what was found
 * @param remedy what to write instead
 */
public record LintProblem(
    String file, int line, int column, String rule, LintKind kind, String message, String remedy)
    implements Comparable<LintProblem> {

  private static final Comparator<LintProblem> ORDER =
      Comparator.comparing(LintProblem::file)
          .thenComparing(LintProblem::line)
          .thenComparing(LintProblem::column)
          .thenComparing(LintProblem::kind)
          .thenComparing(LintProblem::message)
          .thenComparing(LintProblem::rule)
          .thenComparing(LintProblem::remedy);

  /** In the order of files, lines and columns. */
  @Override
  public int compareTo(LintProblem other) {
    return ORDER.compare(this, other);
  }

  /** What is wrong and how to mend it: {@code rule: message -> remedy}. */
  String inWords() {
    String of = rule.isEmpty() ? "" : rule + ": ";
    return "%s%s -> %s".formatted(of, message, remedy);
  }

  /** One line: {@code file:line:column: [kind] rule: message -> remedy}. */
  @Override
  public String toString() {
    return "%s:%d:%d: [%s] %s".formatted(file, line, column, kind.id(), inWords());
  }
}
