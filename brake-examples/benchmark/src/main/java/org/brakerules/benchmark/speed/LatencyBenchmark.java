package org.brakerules.benchmark.speed;

import java.util.concurrent.TimeUnit;
import org.brakerules.BrakeRules;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** How long single decisions take: the usual one, and the slow ones. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LatencyBenchmark {

  private final BrakeRules rules = BrakeRules.standard();
  private final BrakeJob job = DemoJobs.job("worn-out-wheel-end");

  /** One wheel end. */
  @Benchmark
  public JobDecision rules() {
    return rules.decide(job);
  }
}
