package org.brakerules.benchmark.speed;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.brakerules.internal.RuleBase;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One wheel end by rule bases of more and more rules, all put together in the same way. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RuleCountBenchmark {

  private static final BrakeJob JOB = DemoJobs.job("worn-out-wheel-end");

  /** Kept from turn to turn: thousands of rules take seconds to put together. */
  private static final Map<ManyRules, RuleBase> KEPT = new ConcurrentHashMap<>();

  /** Rules that are about other brakes. */
  @State(Scope.Benchmark)
  public static class Quiet extends Base {
    /** How many times the rules. */
    @Param({"1", "2", "5", "10"})
    private int times;

    /** Puts the rules together. */
    @Setup
    public void load() {
      load(new ManyRules(times, false));
    }
  }

  /** Rules that all speak: as many times the reasons. */
  @State(Scope.Benchmark)
  public static class Speaking extends Base {
    /** How many times the rules. */
    @Param("10")
    private int times;

    /** Puts the rules together. */
    @Setup
    public void load() {
      load(new ManyRules(times, true));
    }
  }

  /** A rule base. */
  abstract static class Base {
    private RuleBase rules = kept(new ManyRules(1, false));

    void load(ManyRules many) {
      rules = kept(many);
    }

    JobDecision decide() {
      return rules.decide(JOB);
    }

    private static RuleBase kept(ManyRules many) {
      return KEPT.computeIfAbsent(many, ManyRules::ruleBase);
    }
  }

  /** With rules about other brakes. */
  @Benchmark
  public JobDecision quiet(Quiet base) {
    return base.decide();
  }

  /** With rules that say the same once more. */
  @Benchmark
  public JobDecision speaking(Speaking base) {
    return base.decide();
  }
}
