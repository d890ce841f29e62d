package org.brakerules.linter.internal.check;

import java.util.regex.Pattern;
import org.brakerules.model.json.Problem;

/** A problem of the job of a case, in the words of its file. */
final class CaseJobProblem {

  private static final Pattern BARE_NUMBER = Pattern.compile("-?[0-9.]+");

  private CaseJobProblem() {}

  /** What was found, behind the names that lead to it. */
  static String found(String pointer, Problem problem) {
    String where = pointer.isEmpty() ? "" : path(pointer) + ": ";
    return where + "found " + problem.found();
  }

  /** YAML takes a bare yes, no or number for something else than the text that was meant. */
  static String remedy(Problem problem) {
    String found = problem.found();
    if (found.equals("true") || found.equals("false")) {
      return "write " + problem.expected() + ", with the quotes: a bare yes or no is no text";
    }
    return BARE_NUMBER.matcher(found).matches() && problem.expected().startsWith("one line of text")
        ? "write \"" + found + "\", with the quotes: a bare number is no text"
        : "write " + problem.expected();
  }

  /** The names of a pointer, such as {@code change > lining/upper > thickness}. */
  static String path(String pointer) {
    return pointer.substring(1).replace("/", " > ").replace("~1", "/").replace("~0", "~");
  }
}
