package org.brakerules.harness;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.brakerules.BrakeRules;
import org.brakerules.harness.cases.Answers;
import org.brakerules.harness.cases.CaseFiles;
import org.brakerules.harness.cases.CaseOnTrial;
import org.brakerules.harness.cases.CaseRunner;
import org.brakerules.harness.cases.RuleCase;
import org.brakerules.harness.reference.BookMistake;
import org.brakerules.harness.reference.ReferenceBook;
import org.brakerules.linter.LintProblem;
import org.brakerules.linter.RuleLinter;
import org.brakerules.trial.RuleBaseFolder;
import org.brakerules.trial.TrialRules;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Whose rules a command asks: those this program brings, or those somebody is working on. */
final class RulesOption {

  @Option(
      names = "--rules",
      paramLabel = "DIR",
      description =
          "The folder that holds org/brakerules/rules, such as src/main/resources; the rules of"
              + " this program if left out. Nothing has to be built.")
  private @Nullable Path chosen;

  /** What is done with the rules. */
  interface Work {
    /** Does it. */
    ExitCode with(RuleBaseFolder folder) throws IOException;
  }

  /** Asks the rules, or says why they or their cases cannot be asked. */
  int ask(Terminal terminal, Work work) {
    try (RuleBaseFolder folder = folder()) {
      return work.with(folder).number();
    } catch (BookMistake invalid) {
      terminal.complain(String.valueOf(invalid.getMessage()));
      return ExitCode.INVALID_INPUT.number();
    } catch (MistakenRulesException mistaken) {
      mistaken.lines().forEach(terminal::complain);
      return ExitCode.INVALID_INPUT.number();
    } catch (IOException e) {
      terminal.complain("The rules cannot be read: " + e.getMessage());
      return ExitCode.NO_ACCESS.number();
    }
  }

  private RuleBaseFolder folder() throws IOException {
    Path folder = chosen;
    if (folder == null) {
      return RuleBaseFolder.ofThisArtifact();
    }
    RuleBaseFolder rules = RuleBaseFolder.of(folder);
    refuseMistakes(folder);
    return rules;
  }

  /** The cases beside the rules. */
  CaseFiles cases(RuleBaseFolder folder) {
    return chosen == null
        ? CaseFiles.ofThisArtifact()
        : CaseFiles.in(folder.path(), BrakeRules.standard().components());
  }

  /**
   * The cases beside the rules, all of which come out as expected: of one that does not nothing
   * could be learnt.
   *
   * @param folder the rules
   * @param progress shows the component whose cases run
   * @throws MistakenRulesException if one does not
   */
  List<CaseOnTrial> soundCases(RuleBaseFolder folder, ProgressBar progress) throws IOException {
    CaseRunner runner = new CaseRunner(answers(folder));
    CaseFiles files = cases(folder);
    List<RuleCase> all = new ArrayList<>();
    long failed = 0;
    for (String component : files.components()) {
      progress.at(component);
      List<RuleCase> own = files.cases(component);
      failed += own.parallelStream().filter(one -> !runner.run(one).asExpected()).count();
      all.addAll(own);
      progress.oneDone();
    }
    if (failed > 0) {
      throw new MistakenRulesException(
          "%d of the cases did not come out as expected; see brake cases first".formatted(failed));
    }
    return all.stream().map(CaseOnTrial::of).toList();
  }

  /** What answers the cases. */
  Answers answers(RuleBaseFolder folder) throws IOException {
    return chosen == null
        ? Answers.of(BrakeRules.standard())
        : Answers.of(TrialRules.in(folder.path()));
  }

  /** The reference of the rules. */
  ReferenceBook book(RuleBaseFolder folder) throws IOException {
    return chosen == null
        ? ReferenceBook.standard()
        : ReferenceBook.of(TrialRules.in(folder.path()), folder.path());
  }

  private static void refuseMistakes(Path folder) throws IOException {
    try {
      List<LintProblem> problems = RuleLinter.lint(folder);
      if (!problems.isEmpty()) {
        throw MistakenRulesException.of(folder, problems);
      }
    } catch (UncheckedIOException unreadable) {
      throw new IOException(unreadable.getMessage(), unreadable);
    }
  }
}
