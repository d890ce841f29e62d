package org.brakerules.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.random.RandomJobs;
import org.junit.jupiter.api.Test;

/** What the cases do not notice is told, and nothing else. */
class MutationTrialTest {

  private static final Path RESOURCES = Path.of("../src/main/resources");

  @Test
  void cases_that_expect_nothing_notice_nothing_but_what_no_table_takes() throws IOException {
    TrialCase indifferent = new Asked(RandomJobs.of(1), true);

    MutationResult result = MutationTrial.of(RESOURCES, List.of(indifferent)).of("hub");

    assertThat(result.tried()).isGreaterThan(50);
    assertThat(result.survivors()).hasSize(result.tried() - result.refused());
  }

  @Test
  void a_case_that_is_asked_and_always_objects_notices_the_rules_it_names() throws IOException {
    TrialCase strict = new Asked(RandomJobs.of(1), false);

    MutationResult result = MutationTrial.of(RESOURCES, List.of(strict)).of("hose");

    assertThat(result.survivors()).extracting(Mutant::of).doesNotContain("HOSE-010");
  }

  /**
   * A case about a hose.
   *
   * @param job its job
   * @param content whether it takes any answer
   */
  private record Asked(BrakeJob job, boolean content) implements TrialCase {

    @Override
    public String component() {
      return "hose";
    }

    @Override
    public String name() {
      return "A hose";
    }

    @Override
    public Set<String> rules() {
      return Set.of("HOSE-010");
    }

    @Override
    public boolean isAsExpected(TrialRules rules) {
      return content;
    }
  }
}
