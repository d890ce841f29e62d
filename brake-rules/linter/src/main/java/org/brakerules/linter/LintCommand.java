package org.brakerules.linter;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import org.brakerules.linter.RuleLinter.Outcome;

/**
 * Lints a rule base: one argument, the folder that holds {@code org/brakerules/rules}. Prints one
 * line for each problem. Exit code 0: all is well; 1: there are problems; 2: nothing could be read.
 */
public final class LintCommand {

  private LintCommand() {}

  /** Lints, and ends with the exit code unless it is 0. */
  public static void main(String[] arguments) {
    int code = run(System.out, arguments);
    if (code != 0) {
      System.exit(code);
    }
  }

  static int run(PrintStream out, String... arguments) {
    if (arguments.length != 1) {
      out.println("Name the folder that holds org/brakerules/rules, such as src/main/resources.");
      return 2;
    }
    try {
      return print(out, RuleLinter.run(Path.of(arguments[0])));
    } catch (IOException e) {
      out.println(arguments[0] + ": the rule base cannot be read: " + e.getMessage());
      return 2;
    }
  }

  private static int print(PrintStream out, Outcome outcome) {
    outcome.problems().forEach(out::println);
    out.printf(
        "%s in %s read, %s.%n",
        counted(outcome.rules(), "rule"),
        counted(outcome.files(), "file"),
        counted(outcome.problems().size(), "problem"));
    return outcome.problems().isEmpty() ? 0 : 1;
  }

  private static String counted(long count, String what) {
    return (count == 0 ? "no" : count) + " " + what + (count == 1 ? "" : "s");
  }
}
