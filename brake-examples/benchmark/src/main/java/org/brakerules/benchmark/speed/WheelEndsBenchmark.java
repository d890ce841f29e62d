package org.brakerules.benchmark.speed;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.TimeUnit;
import org.brakerules.BrakeRules;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.JobReader;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A job with more and more wheel ends, all as worn as the first, two on an axle. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class WheelEndsBenchmark {

  private final BrakeRules rules = BrakeRules.standard();

  /** The number of wheel ends. */
  @Param({"1", "2", "6", "12"})
  private int wheelEnds;

  private BrakeJob job = DemoJobs.job("worn-out-wheel-end");

  /** Makes the job. */
  @Setup
  public void make() throws JsonProcessingException {
    ObjectMapper json = new ObjectMapper();
    ObjectNode document = (ObjectNode) json.readTree(DemoJobs.text("worn-out-wheel-end"));
    document.remove("sizes");
    ObjectNode unit = (ObjectNode) document.get("units").get(0);
    ObjectNode worn = (ObjectNode) unit.get("axles").get(0).get("wheelEnds").get(0);
    ArrayNode axles = unit.putArray("axles");
    for (int made = 0; made < wheelEnds; made += 2) {
      ObjectNode axle = axles.addObject().put("axle", made / 2 + 1).put("kind", "drive");
      ArrayNode ends = axle.putArray("wheelEnds");
      ends.add(worn.deepCopy().put("side", "left"));
      if (made + 1 < wheelEnds) {
        ends.add(worn.deepCopy().put("side", "right"));
      }
    }
    job = JobReader.read(document.toString());
  }

  /** The whole job. */
  @Benchmark
  public JobDecision rules() {
    return rules.decide(job);
  }
}
