package org.brakerules.harness;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.ToIntFunction;
import org.brakerules.harness.cases.CaseOnTrial;
import org.brakerules.trial.MutationResult;
import org.brakerules.trial.MutationTrial;
import org.brakerules.trial.RuleBaseFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Changes the rules and limits on purpose and lists the changes that no case notices. */
@Command(
    name = "mutate",
    description = {
      "Changes each rule and each limit of the rule base in every small way, one at a time, and asks"
          + " the cases whether they notice.",
      "A change that no case notices could be made by anybody unseen: write a case for it. One that"
          + " makes no difference to any job is listed beside the rules, with the reason."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the cases noticed every change that makes a difference",
      "1:some change went unnoticed, or one listed as equivalent is none",
      "2:wrong usage",
      "3:the rules or their cases have mistakes",
      "4:the rules cannot be read",
      "70:a mistake in this program"
    })
final class MutateCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      arity = "0..*",
      paramLabel = "COMPONENT",
      description = "The components to change, such as camshaft-bushing; all if left out.")
  private List<String> components = List.of();

  @Mixin private RulesOption rules = new RulesOption();

  MutateCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return rules.ask(terminal, this::mutate);
  }

  private ExitCode mutate(RuleBaseFolder folder) throws IOException {
    List<String> known = rules.cases(folder).components();
    components.forEach(component -> refuseUnknown(component, known));
    List<CaseOnTrial> cases =
        rules.soundCases(folder, ProgressBar.on(terminal, rules.cases(folder).components().size()));
    return run(MutationTrial.of(folder.path(), cases), components.isEmpty() ? known : components);
  }

  private ExitCode run(MutationTrial trial, List<String> chosen) throws IOException {
    ProgressBar progress = ProgressBar.on(terminal, chosen.size());
    List<MutationResult> results = new ArrayList<>();
    for (String component : chosen) {
      progress.at(component);
      MutationResult result = trial.of(component);
      progress.oneDone();
      results.add(result);
      print(result);
    }
    terminal
        .out()
        .printf(
            "%s, %d equivalent, %d not noticed%n",
            Counted.of(sum(results, MutationResult::tried), "change"),
            sum(results, MutationResult::equivalent),
            sum(results, result -> result.survivors().size()));
    return results.stream().allMatch(MutationResult::isClean) ? ExitCode.DONE : ExitCode.WORK_LEFT;
  }

  private void print(MutationResult result) {
    terminal
        .out()
        .printf(
            "%s: %s, %d refused by the tables, %d equivalent, %d not noticed%n",
            result.component(),
            Counted.of(result.tried(), "change"),
            result.refused(),
            result.equivalent(),
            result.survivors().size());
    result.survivors().forEach(survivor -> terminal.out().printf("  %s%n", survivor));
    result
        .noLongerEquivalent()
        .forEach(
            change ->
                terminal
                    .out()
                    .printf(
                        "  %s: listed as equivalent, but it is noticed or is no change; take the"
                            + " row out of %s.equivalent-changes.csv%n",
                        change, result.component()));
    terminal.out().flush();
  }

  private static int sum(List<MutationResult> results, ToIntFunction<MutationResult> count) {
    return results.stream().mapToInt(count).sum();
  }

  private static void refuseUnknown(String component, List<String> known) {
    if (!known.contains(component)) {
      throw UsageMistake.unknown(component, "is no component", known, "components are");
    }
  }
}
