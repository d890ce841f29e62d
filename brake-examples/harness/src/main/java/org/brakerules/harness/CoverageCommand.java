package org.brakerules.harness;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.brakerules.BrakeRules;
import org.brakerules.harness.cases.CaseOnTrial;
import org.brakerules.harness.cases.LimitCases;
import org.brakerules.harness.coverage.CoverageHtml;
import org.brakerules.harness.coverage.CoverageJson;
import org.brakerules.harness.coverage.CoverageReport;
import org.brakerules.harness.coverage.CoverageText;
import org.brakerules.limit.Limit;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.trial.CoverageTrial;
import org.brakerules.trial.RuleBaseFolder;
import org.brakerules.trial.TrialRules;
import org.brakerules.trial.coverage.Coverage;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what the cases show of the rules, limits, points and sources, and what they leave open. */
@Command(
    name = "coverage",
    description = {
      "Runs the cases of the rule base and lists what they do not show: a rule that never fires, a"
          + " condition that never decides, a side of a limit, a point nobody reads, a source"
          + " nothing rests on.",
      "What may stay open is listed with its reason in coverage-open.csv beside the rules, a point"
          + " that nobody reads in unread.csv."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:nothing is open",
      "1:something is open, or is listed as open and is not",
      "2:wrong usage",
      "3:the rules or their cases have mistakes",
      "4:the rules cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class CoverageCommand implements Callable<Integer> {

  /** How a report is written. */
  enum Format {
    TEXT(CoverageText::of),
    JSON(CoverageJson::of),
    HTML(CoverageHtml::of);

    @SuppressWarnings("ImmutableEnumChecker") // a reference to a static method
    private final Function<CoverageReport, String> writer;

    Format(Function<CoverageReport, String> writer) {
      this.writer = writer;
    }
  }

  private final Terminal terminal;

  @Parameters(
      arity = "0..*",
      paramLabel = "COMPONENT",
      description =
          "The components to show in full detail, such as camshaft-bushing; all, with what is open"
              + " and counts, if left out.")
  private List<String> components = List.of();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text, json or html; text if left out.")
  private Format format = Format.TEXT;

  @Option(
      names = "--output",
      paramLabel = "FILE",
      description = "The file to write; standard output if left out.")
  private @Nullable Path output;

  @Mixin private RulesOption rules = new RulesOption();

  CoverageCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    List<String> known = BrakeRules.standard().components();
    components.forEach(component -> refuseUnknown(component, known));
    if (output != null && !WholeFile.hasPlace(output)) {
      return cannotWrite(output).number();
    }
    return rules.ask(terminal, folder -> write(report(folder, known)));
  }

  private CoverageReport report(RuleBaseFolder folder, List<String> known) throws IOException {
    ProgressBar progress = ProgressBar.on(terminal, rules.cases(folder).components().size() + 1);
    List<CaseOnTrial> cases = rules.soundCases(folder, progress);
    progress.at("what the cases show");
    Map<Limit, List<BrakeJob>> made = LimitCases.jobs(TrialRules.in(folder.path()).limits());
    Coverage coverage = CoverageTrial.of(folder.path(), cases, made);
    progress.oneDone();
    return components.isEmpty()
        ? CoverageReport.ofAll(coverage, known)
        : CoverageReport.of(coverage, components);
  }

  private ExitCode write(CoverageReport report) {
    return write(format.writer.apply(report))
        .or(report.hasOpen() ? ExitCode.WORK_LEFT : ExitCode.DONE);
  }

  private ExitCode write(String text) {
    Path file = output;
    if (file == null) {
      terminal.out().print(text);
      terminal.out().flush();
      return ExitCode.DONE;
    }
    try {
      WholeFile.write(file, text);
      return ExitCode.DONE;
    } catch (IOException e) {
      return cannotWrite(file);
    }
  }

  private ExitCode cannotWrite(Path file) {
    terminal.complain(file + ": the report cannot be written there; name another file");
    return ExitCode.NO_ACCESS;
  }

  private static void refuseUnknown(String component, List<String> known) {
    if (!known.contains(component)) {
      throw UsageMistake.unknown(component, "is no component", known, "components are");
    }
  }
}
