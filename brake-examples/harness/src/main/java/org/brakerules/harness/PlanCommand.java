package org.brakerules.harness;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.harness.work.PlanReport;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkPlanWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts the work of a job in order. */
@Command(
    name = "plan",
    description =
        "Puts the work of a brake job in order, with cautions, hold points and what to write down.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the plan goes from arrival to the last proof",
      "1:the plan stops at a wheel end, or something must be decided or stated on the way",
      "2:wrong usage",
      "3:the file holds no valid job; every problem is one line on standard error",
      "4:the file cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class PlanCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "A job in JSON; - is standard input.")
  private String file = "";

  @Option(names = "--json", description = "Print the plan as JSON.")
  private boolean json;

  PlanCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return new JobFile(file).answer(terminal, this::show).number();
  }

  private ExitCode show(BrakeJob job) {
    WorkPlan plan = BrakeRules.standard().plan(job);
    terminal.out().print(json ? pretty(plan) : PlanReport.of(plan));
    terminal.out().flush();
    return plan.isWholeWork() ? ExitCode.DONE : ExitCode.WORK_LEFT;
  }

  private static String pretty(WorkPlan plan) {
    try {
      return PrettyJson.of(new ObjectMapper().readTree(WorkPlanWriter.write(plan)));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }
}
