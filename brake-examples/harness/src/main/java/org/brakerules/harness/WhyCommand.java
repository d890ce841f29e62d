package org.brakerules.harness;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.RuleAnswer;
import org.brakerules.harness.report.Page;
import org.brakerules.harness.report.Palette;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.job.BrakeJob;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Says of every rule that could concern a part whether it speaks, and if not, why. */
@Command(
    name = "why",
    description =
        "Says of each rule that could concern a part whether it speaks, and if not, which of its"
            + " conditions do not hold, with the values of the job.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the rules were asked",
      "2:wrong usage, or no such part or rule",
      "3:the file holds no valid job; every problem is one line on standard error",
      "4:the file cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class WhyCommand implements Callable<Integer> {

  private static final int INDENT = 2;
  private static final int LABEL = 22;

  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "FILE", description = "A job in JSON; - is standard input.")
  private String file = "";

  @Parameters(
      index = "1",
      paramLabel = "PART",
      description = "The path of a part, such as axle2/left/camshaft.")
  private String part = "";

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "RULE",
      description = "The rule to ask, such as CAMSHAFT-010; all if left out.")
  private String rule = "";

  WhyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return new JobFile(file).answer(terminal, this::show).number();
  }

  private ExitCode show(BrakeJob job) {
    List<Decision> decisions = BrakeRules.standard().decide(job).decisions();
    Decision decision = find(decisions);
    List<RuleAnswer> answers = chosen(BrakeRules.standard().why(job, decision.part()));
    Page page = new Page(new Palette(false));
    page.paragraph(
        0, decision.part() + ": " + decision.disposition().name().toLowerCase(Locale.ROOT));
    answers.stream()
        .filter(answer -> answer.whyNot().isEmpty())
        .forEach(answer -> speaks(page, answer, decision));
    answers.stream()
        .filter(answer -> answer.whyNot().isPresent())
        .forEach(answer -> silent(page, answer));
    terminal.out().print(page);
    terminal.out().flush();
    return ExitCode.DONE;
  }

  private static void speaks(Page page, RuleAnswer answer, Decision decision) {
    page.gap();
    page.labelled(INDENT, answer.rule(), LABEL, answer.title());
    String sentence =
        decision.reasons().stream()
            .filter(reason -> reason.rule().equals(answer.rule()))
            .map(Reason::sentence)
            .findFirst()
            .orElse("What it asks for was done.");
    page.labelled(INDENT, "speaks", LABEL, sentence);
  }

  private static void silent(Page page, RuleAnswer answer) {
    page.gap();
    page.labelled(INDENT, answer.rule(), LABEL, answer.title());
    page.labelled(INDENT, "does not speak", LABEL, answer.whyNot().orElseThrow());
  }

  private Decision find(List<Decision> decisions) {
    List<String> paths = decisions.stream().map(one -> one.part().toString()).toList();
    return decisions.stream()
        .filter(one -> one.part().toString().equals(part))
        .findFirst()
        .orElseThrow(() -> new NearbyParts(paths).unknown(part));
  }

  private List<RuleAnswer> chosen(List<RuleAnswer> answers) {
    if (rule.isEmpty()) {
      return answers;
    }
    List<RuleAnswer> found = answers.stream().filter(answer -> answer.rule().equals(rule)).toList();
    if (found.isEmpty()) {
      throw UsageMistake.unknown(
          rule,
          "is no rule on such a part",
          answers.stream().map(RuleAnswer::rule).toList(),
          "known are");
    }
    return found;
  }
}
