package org.brakerules.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.compare.RuleSetComparison;
import org.brakerules.harness.report.ComparisonReport;
import org.brakerules.harness.report.DecisionReport;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.json.DecisionWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Decides the jobs in files. */
@Command(
    name = "decide",
    description = "Decides brake jobs and reports what to do with every part, and why.",
    exitCodeListHeading = "%nExit codes (of several files the highest):%n",
    exitCodeList = {
      "0:everything is decided and nothing is on hold",
      "1:decided, but parts are left undecided or on hold",
      "2:wrong usage",
      "3:a file holds no valid job; every problem is one line on standard error",
      "4:a file cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class DecideCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE",
      description = "Jobs in JSON; - is standard input.")
  private List<String> files = List.of();

  @Option(
      names = "--json",
      description = {
        "Print the decision as JSON. Of several files each decision is one line (JSON Lines), in the"
            + " order of the files; a file with a problem has no line."
      })
  private boolean json;

  @Option(
      names = "--compare",
      paramLabel = "RULESET",
      description = "Print only what differs under another rule set, side by side, as text.")
  private String compared = "";

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      description = "Colours: auto (only on a terminal, unless NO_COLOR is set), always or never.")
  private ColourChoice colour = ColourChoice.AUTO;

  private boolean isFirstReport = true;

  DecideCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * One file to be decided, as JSON or not: the call that waits longest for the parser of options,
   * and has nothing in it that could be mistaken. Empty for every other command line.
   */
  static Optional<DecideCommand> plain(Terminal terminal, String... args) {
    List<String> rest = new ArrayList<>(List.of(args));
    boolean isDecide = !rest.isEmpty() && rest.remove(0).equals("decide");
    boolean asJson = rest.remove("--json");
    if (!isDecide || rest.size() != 1 || !isPlain(rest.get(0))) {
      return Optional.empty();
    }
    DecideCommand command = new DecideCommand(terminal);
    command.files = rest;
    command.json = asJson;
    return Optional.of(command);
  }

  /** Not an option, a file of options, or a text in quotes that the parser would take off. */
  private static boolean isPlain(String argument) {
    return !argument.isEmpty() && "-@\"'".indexOf(argument.charAt(0)) < 0;
  }

  @Override
  public Integer call() {
    if (files.stream().filter(JobFile.STANDARD_INPUT::equals).count() > 1) {
      throw new UsageMistake("standard input can be read once only; name - once");
    }
    if (!compared.isEmpty()) {
      refuseMistakesOfComparing();
    }
    ExitCode worst = ExitCode.DONE;
    for (String file : files) {
      JobFile jobFile = new JobFile(file);
      worst = worst.or(jobFile.answer(terminal, job -> decide(jobFile, job)));
    }
    return worst.number();
  }

  private ExitCode decide(JobFile file, BrakeJob job) {
    if (!compared.isEmpty()) {
      return compare(file, job);
    }
    JobDecision decision = BrakeRules.standard().decide(job);
    print(file, decision);
    return decision.complete() ? ExitCode.DONE : ExitCode.WORK_LEFT;
  }

  private void refuseMistakesOfComparing() {
    if (json) {
      throw new UsageMistake("--compare prints text; leave --json out");
    }
    other();
  }

  private RuleSet other() {
    return RuleSetName.read("--compare", compared, BrakeRules.standard().ruleSets().keySet());
  }

  private ExitCode compare(JobFile file, BrakeJob job) {
    RuleSetComparison both = BrakeRules.standard().compare(job, other());
    printText(ComparisonReport.of(both, titleOf(file)));
    terminal.out().flush();
    return both.here().complete() ? ExitCode.DONE : ExitCode.WORK_LEFT;
  }

  private void print(JobFile file, JobDecision decision) {
    if (json) {
      terminal.out().print(jsonOf(decision, files.size() > 1));
    } else {
      printText(DecisionReport.of(decision, titleOf(file), colour.palette()));
    }
    terminal.out().flush();
  }

  private void printText(String report) {
    terminal.out().print(isFirstReport ? "" : "\n");
    isFirstReport = false;
    terminal.out().print(report);
  }

  private String titleOf(JobFile file) {
    return files.size() > 1 ? file.name() : "";
  }

  private static String jsonOf(JobDecision decision, boolean onOneLine) {
    return onOneLine
        ? DecisionWriter.writeCompact(decision) + "\n"
        : DecisionWriter.write(decision);
  }
}
