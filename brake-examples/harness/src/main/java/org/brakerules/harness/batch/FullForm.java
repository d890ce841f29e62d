package org.brakerules.harness.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.util.function.Function;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.DecisionWriter;

/**
 * The whole document of each decision, as {@code decide --json} writes several.
 *
 * @param decider decides a job; threads ask it at once
 */
public record FullForm(Function<BrakeJob, JobDecision> decider) implements Form {

  @Override
  public String name() {
    return "full";
  }

  @Override
  public String heading() {
    return "";
  }

  @Override
  public CompactDecision write(long number, BrakeJob job, OutputStream out) throws IOException {
    JobDecision decision = decider.apply(job);
    DecisionWriter.writeCompact(decision, out);
    out.write('\n');
    return CompactDecision.of(decision);
  }
}
