package org.brakerules.benchmark.speed;

import java.util.Map;
import org.brakerules.BrakeRules;
import org.brakerules.benchmark.oracle.Oracle;
import org.brakerules.benchmark.oracle.OracleDecision;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Place;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Jobs in a second by one thread and by two. The opponent, which shares nothing between threads,
 * and counting, which touches no memory, show what the machine gives to two threads at all.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
public class ThreadsBenchmark {

  private static final long COUNTED = 100_000;

  private final BrakeRules rules = BrakeRules.standard();
  private final BrakeJob job = DemoJobs.job("worn-out-wheel-end");

  /** The rule base on one thread. */
  @Benchmark
  @Threads(1)
  public JobDecision rulesOnOne() {
    return rules.decide(job);
  }

  /** The rule base on two threads. */
  @Benchmark
  @Threads(2)
  public JobDecision rulesOnTwo() {
    return rules.decide(job);
  }

  /** The opponent on one thread. */
  @Benchmark
  @Threads(1)
  public Map<Place, OracleDecision> oracleOnOne() {
    return Oracle.decide(job);
  }

  /** The opponent on two threads. */
  @Benchmark
  @Threads(2)
  public Map<Place, OracleDecision> oracleOnTwo() {
    return Oracle.decide(job);
  }

  /** Counting on one thread. */
  @Benchmark
  @Threads(1)
  public void countingOnOne() {
    Blackhole.consumeCPU(COUNTED);
  }

  /** Counting on two threads. */
  @Benchmark
  @Threads(2)
  public void countingOnTwo() {
    Blackhole.consumeCPU(COUNTED);
  }
}
