package org.brakerules.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.brakerules.benchmark.result.PerformancePage;
import org.brakerules.benchmark.result.ResultFile;
import org.brakerules.benchmark.result.Results;
import org.brakerules.benchmark.run.Measurement;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Measures everything there is to measure, and writes the result file and its page. */
@Command(
    name = "benchmark",
    mixinStandardHelpOptions = true,
    usageHelpWidth = 100,
    description = "Measures the rule base and writes every figure into one file and one page.")
public final class Benchmark implements Callable<Integer> {

  private static final int FAILED = 1;

  @Option(
      names = "--quick",
      description =
          "A short run that shows whether everything works; its figures are worth little.")
  private boolean quick;

  @Option(
      names = "--rounds",
      paramLabel = "N",
      description = "How often everything is measured in turn, 2 at least; 5 if not stated.")
  private int rounds;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description =
          "Seconds of each timing, after three times as many to warm up; 5 if not stated.")
  private int seconds;

  @Option(
      names = "--soak",
      paramLabel = "N",
      description = "Decisions in one process; 10,000,000 if not stated, 100,000 with --quick.")
  private long soak;

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description =
          "Random jobs held against the oracle; 1,000,000 if not stated, 10,000 with --quick.")
  private long jobs;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The result file; the page lies beside it with the ending .md.")
  private Path out = Path.of("docs", "performance.json");

  @Option(
      names = "--caution",
      paramLabel = "TEXT",
      description = "What a reader of the figures must know, such as what else the machine did.")
  private String caution = "";

  /** Measures. */
  public static void main(String[] args) {
    System.exit(new CommandLine(new Benchmark()).execute(args));
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    if (!out.toString().endsWith(".json")
        || rounds == 1
        || rounds < 0
        || seconds < 0
        || soak < 0
        || jobs < 0) {
      System.err.println(
          "benchmark: --out needs a name that ends with .json, --rounds 2 at least,"
              + " --seconds, --soak and --jobs a number");
      return CommandLine.ExitCode.USAGE;
    }
    Path folder = out.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      System.err.println("benchmark: there is no folder " + folder + "; name another with --out");
      return CommandLine.ExitCode.USAGE;
    }
    try {
      write(measurement().run(System.err));
      return CommandLine.ExitCode.OK;
    } catch (IOException | UncheckedIOException | IllegalStateException failed) {
      System.err.println("benchmark: " + failed.getMessage());
      return FAILED;
    }
  }

  private Measurement measurement() {
    Measurement usual = quick ? Measurement.quick(self()) : Measurement.full(self());
    return usual.with(rounds, seconds, soak, jobs).saying(command(), caution);
  }

  private String command() {
    return "java -jar brake-examples/benchmark/target/benchmark.jar"
        + (quick ? " --quick" : "")
        + (rounds > 0 ? " --rounds " + rounds : "")
        + (seconds > 0 ? " --seconds " + seconds : "")
        + (soak > 0 ? " --soak " + soak : "")
        + (jobs > 0 ? " --jobs " + jobs : "");
  }

  private void write(Results results) throws IOException {
    ResultFile.write(results, out);
    Path page = Path.of(out.toString().replaceAll("json$", "md"));
    Files.writeString(page, PerformancePage.of(results));
    List.of(out, page).forEach(System.out::println);
  }

  /** The jar this program was started from. */
  private static Path self() {
    try {
      return Path.of(Benchmark.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
