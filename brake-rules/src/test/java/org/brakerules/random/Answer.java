package org.brakerules.random;

import java.lang.ref.SoftReference;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.brakerules.BrakeRules;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;

/**
 * A random job with the answer of the standard rule base. All tests of a run look at the same jobs,
 * so each is decided once, and again only if memory runs short.
 *
 * @param job the job
 * @param decision the answer
 */
public record Answer(BrakeJob job, JobDecision decision) {

  private static final Map<Long, SoftReference<Answer>> KNOWN = new ConcurrentHashMap<>();

  /** The answer to the job of a seed. */
  public static Answer of(long seed) {
    SoftReference<Answer> known = KNOWN.get(seed);
    Answer answer = known == null ? null : known.get();
    if (answer == null) {
      BrakeJob job = RandomJobs.of(seed);
      answer = new Answer(job, BrakeRules.standard().decide(job));
      KNOWN.put(seed, new SoftReference<>(answer));
    }
    return answer;
  }
}
