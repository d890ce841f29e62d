package org.brakerules.record;

import java.util.List;
import java.util.Optional;
import org.brakerules.finalcheck.FinalCheck;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;

/**
 * Everything of a job that is filed: the inspection as it was stated, the decision with the rule
 * base and the limits it took, the final check where there was one, and how long to keep it. From
 * it alone the decision can be made again.
 *
 * <pre>{@code
 * String document = JobRecordWriter.write(BrakeRules.standard().record(job));
 * }</pre>
 *
 * @param job the inspection
 * @param decision the decision
 * @param finalCheck the final check; empty if the work is not finished
 * @param retention how long records are kept under the rule set of the job
 */
public record JobRecord(
    BrakeJob job,
    JobDecision decision,
    Optional<FinalCheck> finalCheck,
    List<Retention> retention) {

  /** Keeps its own copy of the list. */
  public JobRecord {
    retention = List.copyOf(retention);
  }
}
