package org.brakerules.harness;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.harness.vehicle.VehicleReport;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.vehicle.VehicleStatus;
import org.brakerules.vehicle.VehicleStatusWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what axles and vehicle of a job come to. */
@Command(
    name = "vehicle",
    description =
        "Compares both ends of every axle, counts defective brakes and holds them against published"
            + " criteria. It is no official ruling.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the status was worked out, whatever it is",
      "2:wrong usage",
      "3:the file holds no valid job; every problem is one line on standard error",
      "4:the file cannot be read, or the output cannot be written",
      "70:a mistake in this program"
    })
final class VehicleCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "A job in JSON; - is standard input.")
  private String file = "";

  @Option(names = "--json", description = "Print the status as JSON.")
  private boolean json;

  VehicleCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    return new JobFile(file).answer(terminal, this::show).number();
  }

  private ExitCode show(BrakeJob job) {
    VehicleStatus status = BrakeRules.standard().vehicle(job);
    terminal.out().print(json ? pretty(status) : VehicleReport.of(status));
    terminal.out().flush();
    return ExitCode.DONE;
  }

  private static String pretty(VehicleStatus status) {
    try {
      return PrettyJson.of(new ObjectMapper().readTree(VehicleStatusWriter.write(status)));
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }
}
