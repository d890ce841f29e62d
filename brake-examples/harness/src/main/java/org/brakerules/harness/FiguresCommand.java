package org.brakerules.harness;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.figure.FiguresWriter;
import org.brakerules.figure.JobFigures;
import org.brakerules.harness.figures.Drawings;
import org.brakerules.harness.figures.FiguresReport;
import org.brakerules.model.job.BrakeJob;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what can be worked out from the readings of a job. */
@Command(
    name = "figures",
    description = "Works out the figures of a brake job and shows the work.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:what can be worked out was",
      "2:wrong usage",
      "3:the file holds no valid job; every problem is one line on standard error",
      "4:the file cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class FiguresCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "A job in JSON; - is standard input.")
  private String file = "";

  @Option(names = "--json", description = "Print the figures as JSON.")
  private boolean json;

  @Option(
      names = "--svg",
      paramLabel = "DIR",
      description =
          "Also draw each wheel end's stroke budget and its readings against their limits, as SVG"
              + " files in this folder.")
  private @Nullable Path folder;

  FiguresCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return new JobFile(file).answer(terminal, this::show).number();
  }

  private ExitCode show(BrakeJob job) {
    JobFigures figures = BrakeRules.standard().figures(job);
    if (folder != null && !isDrawn(Drawings.of(figures), folder)) {
      return ExitCode.NO_ACCESS;
    }
    terminal.out().print(json ? pretty(figures) : FiguresReport.of(figures));
    terminal.out().flush();
    return ExitCode.DONE;
  }

  private boolean isDrawn(Map<String, String> drawings, Path into) {
    if (drawings.isEmpty()) {
      terminal.complain(
          into + ": nothing to draw, for no reading meets a limit and no play is known");
      return true;
    }
    try {
      Drawings.write(drawings, into);
      return true;
    } catch (IOException failure) {
      terminal.complain(into + ": the drawings cannot be written there; name another folder");
      return false;
    }
  }

  private static String pretty(JobFigures figures) {
    try {
      return PrettyJson.of(new ObjectMapper().readTree(FiguresWriter.write(figures)));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }
}
