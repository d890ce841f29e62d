package org.brakerules.harness;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.brakerules.linter.LintProblem;
import org.brakerules.linter.RuleLinter;
import org.brakerules.linter.SarifLog;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lints a rule base that is being worked on. */
@Command(
    name = "lint",
    description = "Finds what is wrong with a rule base that is being worked on.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:nothing is wrong",
      "1:something is wrong; each problem is one line with file, line and remedy",
      "2:wrong usage",
      "4:the rule base cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class LintRulesCommand implements Callable<Integer> {

  /** How the problems are printed. */
  private enum Format {
    TEXT,
    SARIF
  }

  private final Terminal terminal;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description =
          "text, one line for each problem, or sarif, which editors and code hosts read; text if"
              + " left out.")
  private Format format = Format.TEXT;

  @Parameters(
      paramLabel = "DIR",
      description = "The folder that holds org/brakerules/rules, such as src/main/resources.")
  private Path folder = Path.of("");

  LintRulesCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try {
      return print(RuleLinter.lint(folder)).number();
    } catch (UncheckedIOException unreadable) {
      terminal.complain(folder + ": the rule base cannot be read: " + unreadable.getMessage());
      return ExitCode.NO_ACCESS.number();
    }
  }

  private ExitCode print(List<LintProblem> problems) {
    if (format == Format.SARIF) {
      terminal.out().print(SarifLog.of(problems, folder));
    } else {
      problems.forEach(terminal.out()::println);
      terminal.out().println(Counted.of(problems.size(), "problem"));
    }
    return problems.isEmpty() ? ExitCode.DONE : ExitCode.WORK_LEFT;
  }
}
