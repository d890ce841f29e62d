package org.brakerules.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.brakerules.BrakeRules;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.DecisionWriter;
import org.brakerules.random.RandomJobs;
import org.junit.jupiter.api.Test;

/** Rules put together from their files decide what the compiled rules decide. */
class TrialRulesTest {

  private static final Path RESOURCES = Path.of("../src/main/resources");

  private final BrakeRules compiled = BrakeRules.standard();

  @Test
  void a_random_job_is_decided_alike_word_for_word() throws IOException {
    TrialRules trial = TrialRules.in(RESOURCES);
    for (long seed = 0; seed < 500; seed++) {
      BrakeJob job = RandomJobs.of(seed);
      assertThat(DecisionWriter.write(trial.decide(job)))
          .as("seed %s", seed)
          .isEqualTo(DecisionWriter.write(compiled.decide(job)));
    }
  }
}
