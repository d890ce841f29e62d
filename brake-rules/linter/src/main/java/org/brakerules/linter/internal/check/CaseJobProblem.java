package org.brakerules.linter.internal.check;

import org.brakerules.model.json.Problem;

/** A problem of the job of a case, in the words of its file. */
final class CaseJobProblem {

  private CaseJobProblem() {}

  /** What was found, behind the names that lead to it. */
  static String found(String pointer, Problem problem) {
    String where = pointer.isEmpty() ? "" : path(pointer) + ": ";
    return where + "found " + problem.found();
  }

  static String remedy(Problem problem) {
    return "write " + problem.expected();
  }

  /** The names of a pointer, such as {@code change > lining/upper > thickness}. */
  static String path(String pointer) {
    return pointer.substring(1).replace("/", " > ").replace("~1", "/").replace("~0", "~");
  }
}
