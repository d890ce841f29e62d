package org.brakerules.benchmark.speed;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.calc.shim.EndPlayBand;
import org.brakerules.calc.shim.EndPlayShims;
import org.brakerules.calc.shim.ShimPiece;
import org.brakerules.calc.shim.ShimPlan;
import org.brakerules.figure.JobFigures;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Condition;
import org.brakerules.model.quantity.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Shims for an end play out of a drawer of them, and all figures of a wheel end. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ShimBenchmark {

  private final BrakeRules rules = BrakeRules.standard();
  private final BrakeJob job = DemoJobs.job("worn-out-wheel-end");
  private final EndPlayBand band = new EndPlayBand(Length.inches("0.005"), Length.inches("0.030"));
  private final Length endPlay = Length.inches("0.187");
  private final List<ShimPiece> drawer =
      Stream.of("0.010", "0.015", "0.020", "0.030", "0.045", "0.060")
          .map(thickness -> new ShimPiece(Length.inches(thickness), Condition.NEW))
          .flatMap(piece -> Stream.of(piece, piece, piece, piece, piece, piece))
          .toList();

  /** The best stack of six thicknesses, six of each. */
  @Benchmark
  public ShimPlan drawer() {
    return EndPlayShims.choose(endPlay, band, List.of(), Length.inches("0"), drawer);
  }

  /** Every figure of the worn wheel end, its decision among them. */
  @Benchmark
  public JobFigures figures() {
    return rules.figures(job);
  }
}
