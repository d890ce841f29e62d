package org.brakerules.harness;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.harness.batch.NamedInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Decides many jobs, one a line. */
@Command(
    name = "batch",
    description = {
      "Decides many jobs, one a line, into one decision a line, in the same order and on all cores.",
      "It may be stopped or killed at any moment: the same command goes on where it stopped. Until it"
          + " is finished its output is OUT.part; OUT.state says how far it is."
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:every line has its decision, whatever was decided",
      "2:wrong usage, or an unfinished run was called otherwise",
      "3:lines have no decision and stand in the file of the rejects; all others have theirs",
      "4:stopped: the input cannot be read to its end, or the output cannot be written",
      "70:a mistake in this program; a line it met stands in the file of the rejects"
    })
final class BatchCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      paramLabel = "IN",
      description =
          "Jobs, one a line, each as decide reads it; - is standard input. A file packed with gzip is"
              + " unpacked.")
  private String input = "";

  @Option(
      names = "--out",
      paramLabel = "OUT",
      required = true,
      description = "Takes the decisions; packed if it ends in .gz; - is standard output.")
  private String out = "";

  @Option(
      names = "--form",
      paramLabel = "FORM",
      description =
          "compact (the default): ids, and before them one line that says what they are; full: each"
              + " decision as decide --json writes it.")
  private BatchForm form = BatchForm.COMPACT;

  @Option(
      names = "--rejects",
      paramLabel = "FILE",
      description =
          "Takes every line without a decision, with its number and why; OUT.rejects.jsonl if left"
              + " out.")
  private String rejects = "";

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "How many threads decide; one for each core if left out.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Option(names = "--summary", paramLabel = "FILE", description = "Write the summary as JSON too.")
  private String summary = "";

  @Option(
      names = "--chart",
      paramLabel = "FILE",
      description = "Draw the summary as well, in black and white, as SVG.")
  private String chart = "";

  @Option(
      names = "--again",
      description = "Start afresh, whatever an unfinished run has left behind.")
  private boolean again;

  BatchCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (threads < 1) {
      throw new UsageMistake("--threads counts threads; write 1 or more");
    }
    BatchPlaces places = BatchPlaces.of(input, out, rejects, summary, chart);
    Optional<String> obstacle = places.obstacle();
    if (obstacle.isPresent()) {
      terminal.complain(obstacle.get());
      return ExitCode.NO_ACCESS.number();
    }
    try {
      return decide(places).number();
    } catch (UnreadableFileException unreadable) {
      terminal.complain(new JobFile(input).name() + ": " + unreadable.getMessage());
      return ExitCode.NO_ACCESS.number();
    }
  }

  private ExitCode decide(BatchPlaces places) throws UnreadableFileException {
    if (input.equals(JobFile.STANDARD_INPUT)) {
      return run(places, terminal.in(), 0);
    }
    Path file = JobFile.existing(input, "a file with jobs");
    try (InputStream stream = open(file)) {
      return run(places, stream, Files.isRegularFile(file) ? Files.size(file) : 0);
    } catch (IOException failure) {
      throw new UnreadableFileException(JobFile.reason(failure));
    }
  }

  /** A pipe with a name has no place to seek to, which a channel would ask it for. */
  private static InputStream open(Path file) throws IOException {
    return Files.exists(file) && !Files.isRegularFile(file)
        ? new FileInputStream(file.toFile())
        : Files.newInputStream(file);
  }

  private ExitCode run(BatchPlaces places, InputStream stream, long size) {
    BatchRun run =
        new BatchRun(terminal, BrakeRules.standard(), form, threads, size, places, again);
    return run.of(new NamedInput(input, stream));
  }
}
