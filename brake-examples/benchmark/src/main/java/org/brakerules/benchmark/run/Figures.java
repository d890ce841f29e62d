package org.brakerules.benchmark.run;

import java.util.List;
import java.util.Optional;
import org.brakerules.benchmark.Agreement;
import org.brakerules.benchmark.result.Figure;
import org.brakerules.benchmark.result.Measured;
import org.brakerules.benchmark.result.Target;

/** The figures that have something to reach, and how they are taken from what was measured. */
final class Figures {

  private static final String RULES = "WholeAnswer.rules(worn-out-wheel-end)";
  private static final String ORACLE = "WholeAnswer.oracle(worn-out-wheel-end)";
  private static final String JSON = "WholeAnswer.json(worn-out-wheel-end)";
  private static final double KILO = 1000;
  private static final double MEGA = 1_000_000;
  private static final long MILLION = 1_000_000;

  private Figures() {}

  /** All of them as they came out. */
  static List<Figure> all(Series series, Agreement.Outcome agreed) {
    return List.of(
        new Figure(
            "one-wheel-end-against-oracle",
            "one wheel end, full answer, against the oracle",
            "x",
            Target.atMost(6, 3),
            series.ratio(RULES, ORACLE)),
        new Figure(
            "one-wheel-end-against-json",
            "the same against reading and writing its JSON",
            "x",
            Target.atMost(1, 0.5),
            series.ratio(RULES, JSON)),
        new Figure(
            "allocation-per-wheel-end",
            "allocation per wheel end",
            "kB",
            Target.atMost(20, 10),
            series.of(RULES + "/bytes", KILO)),
        new Figure(
            "two-threads-against-one",
            "2 threads against 1",
            "x",
            Target.atLeast(1.8, 1.9),
            series.ratio("Threads.rulesOnTwo", "Threads.rulesOnOne")),
        new Figure(
            "ten-times-the-rules",
            "ten times the rules, nine of them about other brakes",
            "x",
            Target.atMost(4, 2),
            series.ratio("RuleCount.quiet(10)", "RuleCount.quiet(1)")),
        new Figure(
            "pipeline-against-oracle",
            "JSON Lines in to JSON Lines out, 2 threads, jobs in a second against the oracle's",
            "x",
            Target.atLeast(0.6, 0.85),
            series.ratio("Pipeline.rules", "Pipeline.oracle")),
        new Figure(
            "cold-start",
            "processor time to the first decision from JSON, archive and start script, against a bare JVM",
            "x",
            Target.atMost(4, 2.5),
            series.ratio(ColdStart.SCRIPT, ColdStart.BARE)),
        new Figure(
            "heap-of-loaded-base",
            "heap kept by the loaded base, all rules put together, with a session",
            "MB",
            Target.atMost(4),
            series.of(RetainedHeap.WHOLE, MEGA)),
        new Figure(
            "disagreements-in-a-million-jobs",
            "parts on which rules and oracle differ in 1,000,000 jobs",
            "parts",
            Target.atMost(0),
            inAMillion(agreed)));
  }

  /** Fewer jobs prove nothing about a million; more disagree in no fewer. */
  private static Optional<Measured> inAMillion(Agreement.Outcome agreed) {
    return agreed.jobs() < MILLION
        ? Optional.empty()
        : Optional.of(Measured.counted((double) agreed.disagreements()));
  }
}
