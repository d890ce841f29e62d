package org.brakerules.benchmark.run;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.brakerules.BrakeRules;
import org.brakerules.benchmark.Agreement;
import org.brakerules.benchmark.result.Machine;
import org.brakerules.benchmark.result.Results;
import org.brakerules.model.decision.RuleBaseVersion;

/**
 * One run of all measurements.
 *
 * @param self the jar of this program
 * @param rounds how often everything is measured in turn
 * @param seconds seconds of a timing, after three times as many to warm up
 * @param starts starts in a round
 * @param decisions decisions of the long run in one process
 * @param jobs random jobs whose answers are held against the oracle's
 * @param command the command that asked for it
 * @param caution what a reader must know
 */
public record Measurement(
    Path self,
    int rounds,
    int seconds,
    int starts,
    long decisions,
    long jobs,
    String command,
    String caution) {

  /** More than there are cores, so that jobs cross wherever they can. */
  static final int MANY_THREADS = 8;

  /** The run that is published: about an hour. */
  public static Measurement full(Path self) {
    return new Measurement(self, 5, 5, 10, 10_000_000, 1_000_000, "", "");
  }

  /** A run of some minutes. */
  public static Measurement quick(Path self) {
    return new Measurement(self, 2, 1, 2, 100_000, 10_000, "", "");
  }

  /** The same with another number of rounds, seconds, decisions and jobs; 0 leaves them. */
  public Measurement with(int otherRounds, int otherSeconds, long otherDecisions, long otherJobs) {
    return new Measurement(
        self,
        otherRounds > 0 ? otherRounds : rounds,
        otherSeconds > 0 ? otherSeconds : seconds,
        starts,
        otherDecisions > 0 ? otherDecisions : decisions,
        otherJobs > 0 ? otherJobs : jobs,
        command,
        caution);
  }

  /** The same with what stands above its results. */
  public Measurement saying(String asked, String told) {
    return new Measurement(self, rounds, seconds, starts, decisions, jobs, asked, told);
  }

  /**
   * Measures everything.
   *
   * @param progress hears how far it is
   * @throws IOException if a process that measures fails
   */
  public Results run(PrintStream progress) throws IOException, InterruptedException {
    Machine machine = Machine.here();
    // What can fail comes before the rounds, which take most of an hour.
    progress.printf(Locale.ROOT, "%,d decisions in one process%n", decisions);
    List<Soak.Stage> soaked = Soak.run(self, decisions);
    progress.printf(Locale.ROOT, "%,d random jobs held against the oracle%n", jobs);
    Agreement.Outcome agreed = Agreement.of(jobs, MANY_THREADS);
    Series series = new Series();
    Path examples = self.toAbsolutePath().resolve("../../..").normalize();
    ColdStart start = new ColdStart(examples.resolve("harness"), self, starts);
    boolean starting = start.isPossible();
    Path others = examples.resolve("other-engines/target/other-engines.jar");
    boolean comparing = Files.exists(others);
    for (int round = 1; round <= rounds; round++) {
      progress.printf(Locale.ROOT, "round %d of %d%n", round, rounds);
      if (starting) {
        start.run(series);
      }
      RetainedHeap.run(self, series);
      new Timings(self, seconds).run(series);
      if (comparing) {
        new Timings(others, seconds).run(series);
      }
    }
    RuleBaseVersion version = BrakeRules.standard().version();
    return new Results(
        LocalDate.now(ZoneId.systemDefault()).toString(),
        command,
        rounds,
        caution,
        version.version() + ", " + version.fingerprint(),
        machine,
        Figures.all(series, agreed),
        Sections.all(series, RunTimeJars.in(self.resolveSibling("run-time")), soaked, agreed));
  }
}
