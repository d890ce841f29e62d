package org.brakerules.harness;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.record.JobRecord;
import org.brakerules.record.JobRecordWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Puts everything of a job into one document to file. */
@Command(
    name = "record",
    description =
        "Prints one JSON document to file: the job as stated, the decision with its rule base and"
            + " limits, the final check, and how long to keep it. brake replay makes its decision"
            + " again.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the document is printed, whatever is in it",
      "2:wrong usage",
      "3:a file holds no valid job or record; every problem is one line on standard error",
      "4:a file cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class RecordCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "FILE", description = "A job in JSON; - is standard input.")
  private String file = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "RECORD",
      description = "The record of its finished work in JSON, where the work is finished.")
  private String finished = "";

  RecordCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return new JobFile(file).answer(terminal, this::document).number();
  }

  private ExitCode document(BrakeJob job) {
    BrakeRules rules = BrakeRules.standard();
    return finished.isEmpty()
        ? print(rules.record(job))
        : new RecordFile(finished).answer(terminal, done -> print(rules.record(job, done)));
  }

  private ExitCode print(JobRecord record) {
    try {
      terminal
          .out()
          .print(PrettyJson.of(new ObjectMapper().readTree(JobRecordWriter.write(record))));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
    terminal.out().flush();
    return ExitCode.DONE;
  }
}
