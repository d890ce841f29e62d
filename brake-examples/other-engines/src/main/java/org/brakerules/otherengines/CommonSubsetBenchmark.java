package org.brakerules.otherengines;

import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.brakerules.benchmark.speed.DemoJobs;
import org.brakerules.internal.engine.OtherWays;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.engine.Said;
import org.brakerules.model.part.Part;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The common subset of rules on the camshaft and the cam rollers of the worn wheel end. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CommonSubsetBenchmark {

  private static final SmallEngine SMALL = new SmallEngine();
  private static final RuleEngine RULES = OtherWays.only(SmallEngine.ids());
  private static final List<Part> PARTS =
      DemoJobs.job("worn-out-wheel-end").parts().filter(SmallEngine::speaksOf).toList();

  /** Nothing is measured that answers otherwise. */
  @Setup
  public void compare() {
    Set<Said> said = rules();
    if (said.isEmpty() || !said.equals(smallEngine())) {
      throw new IllegalStateException("The engines do not say the same: " + said);
    }
  }

  /** The rules here, without anything around them. */
  @Benchmark
  public Set<Said> rules() {
    return OtherWays.fire(RULES, PARTS);
  }

  /** The small engine. */
  @Benchmark
  public Set<Said> smallEngine() {
    return SMALL.fire(PARTS);
  }
}
