package org.brakerules.benchmark.speed;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.brakerules.BrakeRules;
import org.brakerules.benchmark.oracle.Oracle;
import org.brakerules.benchmark.oracle.OracleDecision;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.DecisionWriter;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.part.Place;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One job by the rule base, by the opponent, and its JSON read and its answer written. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class WholeAnswerBenchmark {

  private static final BrakeRules RULES = BrakeRules.standard();

  /** The worn wheel end, the sound one, and a vehicle. */
  @Param({"worn-out-wheel-end", "finished-rebuild", "tractor-and-trailer"})
  private String job = "";

  private String document = "";
  private BrakeJob read = DemoJobs.job("worn-out-wheel-end");
  private JobDecision decision = RULES.decide(read);

  /** Reads the job. */
  @Setup
  public void read() {
    document = DemoJobs.text(job);
    read = JobReader.read(document);
    decision = RULES.decide(read);
  }

  /** The rule base. */
  @Benchmark
  public JobDecision rules() {
    return RULES.decide(read);
  }

  /** The opponent. */
  @Benchmark
  public Map<Place, OracleDecision> oracle() {
    return Oracle.decide(read);
  }

  /** Its JSON read, and the JSON of the answer written. */
  @Benchmark
  public int json() {
    return JobReader.read(document).units().size() + DecisionWriter.writeCompact(decision).length();
  }
}
