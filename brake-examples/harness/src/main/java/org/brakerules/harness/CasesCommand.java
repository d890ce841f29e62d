package org.brakerules.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.brakerules.harness.cases.CaseFiles;
import org.brakerules.harness.cases.CaseResult;
import org.brakerules.harness.cases.CaseRunner;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Runs the cases that lie beside the rules. */
@Command(
    name = "cases",
    description = {
      "Runs the cases of the rule base again: what each expects, what it got, and why.",
      "With --rules the cases of a folder run against the rules of that folder."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every case came out as expected",
      "1:some case did not",
      "2:wrong usage",
      "3:a file of cases, or of rules, is not written as it should be",
      "4:the rules cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class CasesCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      arity = "0..*",
      paramLabel = "COMPONENT",
      description = "The components whose cases run, such as camshaft-bushing; all if left out.")
  private List<String> components = List.of();

  @Mixin private RulesOption rules = new RulesOption();

  CasesCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return rules.ask(
        terminal, folder -> run(rules.cases(folder), new CaseRunner(rules.answers(folder))));
  }

  private ExitCode run(CaseFiles cases, CaseRunner runner) {
    List<String> known = cases.components();
    components.forEach(component -> refuseUnknown(component, known));
    List<String> chosen = components.isEmpty() ? known : components.stream().distinct().toList();
    ProgressBar progress = ProgressBar.on(terminal, chosen.size());
    List<CaseResult> results = new ArrayList<>();
    for (String component : chosen) {
      progress.at(component);
      List<CaseResult> own = cases.cases(component).stream().map(runner::run).toList();
      progress.oneDone();
      own.forEach(this::print);
      results.addAll(own);
    }
    long failed = results.stream().filter(result -> !result.asExpected()).count();
    terminal.out().printf("%s, %d not as expected%n", Counted.of(results.size(), "case"), failed);
    return failed == 0 ? ExitCode.DONE : ExitCode.WORK_LEFT;
  }

  private void print(CaseResult result) {
    String mark = result.asExpected() ? "ok    " : "FAILED";
    terminal
        .out()
        .printf("%s %s: %s%n", mark, result.ruleCase().component(), result.ruleCase().name());
    result.mismatches().forEach(mismatch -> terminal.out().printf("       %s%n", mismatch));
    terminal.out().flush();
  }

  private static void refuseUnknown(String component, List<String> known) {
    if (!known.contains(component)) {
      throw UsageMistake.unknown(component, "has no cases", known, "components with cases are");
    }
  }
}
