package org.brakerules.linter;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleBaseReader;
import org.brakerules.linter.internal.check.AllChecks;

/** Finds everything wrong with a rule base without compiling or running it. */
public final class RuleLinter {

  private RuleLinter() {}

  /**
   * Lints the rule base in {@code org/brakerules/rules} below a folder.
   *
   * @param resources the folder, such as {@code src/main/resources}
   * @return all problems in the order of files and lines; empty if all is well
   * @throws UncheckedIOException if there is no rule base or it cannot be read; the message says
   *     why
   */
  public static List<LintProblem> lint(Path resources) {
    try {
      return AllChecks.run(RuleBaseReader.read(resources));
    } catch (IOException e) {
      throw new UncheckedIOException(e.getMessage(), e);
    }
  }

  static Outcome run(Path resources) throws IOException {
    RuleBase base = RuleBaseReader.read(resources);
    return new Outcome(base.rules().count(), base.ruleFiles().count(), AllChecks.run(base));
  }

  /** What was read, and what is wrong with it. */
  record Outcome(long rules, long files, List<LintProblem> problems) {}
}
