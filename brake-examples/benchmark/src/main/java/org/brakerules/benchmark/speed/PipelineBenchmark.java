package org.brakerules.benchmark.speed;

import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.brakerules.BrakeRules;
import org.brakerules.benchmark.oracle.Oracle;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.DecisionWriter;
import org.brakerules.model.json.JobReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.infra.Blackhole;

/**
 * Lines of JSON in, lines of JSON out, on two threads. Both ways write the same answer, so they
 * differ in who decides and in nothing else.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@Threads(2)
public class PipelineBenchmark {

  private final BrakeRules rules = BrakeRules.standard();
  private final byte[] line =
      DemoJobs.text("worn-out-wheel-end")
          .replaceAll("\\s*\\n\\s*", " ")
          .getBytes(StandardCharsets.UTF_8);
  private final JobDecision answer = rules.decide(read());

  /** The rule base decides. */
  @Benchmark
  public void rules() {
    write(rules.decide(read()));
  }

  /** The opponent decides. */
  @Benchmark
  public void oracle(Blackhole seen) {
    seen.consume(Oracle.decide(read()));
    write(answer);
  }

  private BrakeJob read() {
    return JobReader.read(new ByteArrayInputStream(line));
  }

  private static void write(JobDecision decision) {
    DecisionWriter.writeCompact(decision, OutputStream.nullOutputStream());
  }
}
