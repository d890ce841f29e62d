package org.brakerules.harness;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.finalcheck.FinalCheck;
import org.brakerules.finalcheck.FinalCheckWriter;
import org.brakerules.harness.work.FinalCheckReport;
import org.brakerules.model.assembly.AssemblyRecord;
import org.brakerules.model.job.BrakeJob;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges the record of finished work. */
@Command(
    name = "final-check",
    description = "Judges what was recorded of the finished work, and says what is released.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every wheel end and the vehicle are released",
      "1:something is not released",
      "2:wrong usage",
      "3:a file holds no valid job or record; every problem is one line on standard error",
      "4:a file cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class FinalCheckCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "FILE", description = "A job in JSON; - is standard input.")
  private String file = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "RECORD",
      description =
          "The record of its finished work in JSON; without it every check is listed that the job"
              + " asks for.")
  private String recordFile = "";

  @Option(names = "--json", description = "Print the final check as JSON.")
  private boolean json;

  FinalCheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return new JobFile(file).answer(terminal, this::check).number();
  }

  private ExitCode check(BrakeJob job) {
    return recordFile.isEmpty()
        ? show(job, AssemblyRecord.EMPTY)
        : new RecordFile(recordFile).answer(terminal, record -> show(job, record));
  }

  private ExitCode show(BrakeJob job, AssemblyRecord record) {
    FinalCheck check = BrakeRules.standard().finalCheck(job, record);
    terminal.out().print(json ? pretty(check) : FinalCheckReport.of(check));
    terminal.out().flush();
    return check.released() ? ExitCode.DONE : ExitCode.WORK_LEFT;
  }

  private static String pretty(FinalCheck check) {
    try {
      return PrettyJson.of(new ObjectMapper().readTree(FinalCheckWriter.write(check)));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }
}
