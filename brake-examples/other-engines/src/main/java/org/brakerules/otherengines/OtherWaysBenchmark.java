package org.brakerules.otherengines;

import java.util.concurrent.TimeUnit;
import org.brakerules.benchmark.speed.DemoJobs;
import org.brakerules.internal.RuleBase;
import org.brakerules.internal.engine.OtherWays;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** One wheel end by the same rule files in other ways, with the same answer. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class OtherWaysBenchmark {

  private static final BrakeJob JOB = DemoJobs.job("worn-out-wheel-end");
  private static final RuleBase KEPT = OtherWays.keptSessions();

  /** The rule text compiled at start. */
  private static final class CompiledAtStart {
    private static final RuleBase RULES = answeringAlike(OtherWays.compiledAtStart());
  }

  /** New sessions. */
  private static final class NewSessions {
    private static final RuleBase RULES = answeringAlike(OtherWays.newSessions());
  }

  /** The way of this project. */
  @Benchmark
  public JobDecision keptSessions() {
    return KEPT.decide(JOB);
  }

  /** A new session for every job. */
  @Benchmark
  public JobDecision newSessions() {
    return NewSessions.RULES.decide(JOB);
  }

  /** The rule text compiled at start. */
  @Benchmark
  public JobDecision compiledAtStart() {
    return CompiledAtStart.RULES.decide(JOB);
  }

  /** Nothing is measured that answers otherwise. */
  private static RuleBase answeringAlike(RuleBase other) {
    if (!other.decide(JOB).equals(KEPT.decide(JOB))) {
      throw new IllegalStateException("The ways do not give the same answer.");
    }
    return other;
  }
}
