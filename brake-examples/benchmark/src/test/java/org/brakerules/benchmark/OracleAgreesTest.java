package org.brakerules.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OracleAgreesTest {

  private static final int JOBS = Integer.getInteger("brakerules.jobs", 2000);
  private static final long FIRST_SEED = Long.getLong("brakerules.seed", 1);
  private static final int EXAMPLES_SHOWN = 10;

  @Test
  void rule_base_and_oracle_decide_random_jobs_alike() {
    Tally tally =
        new Run(FIRST_SEED, JOBS, done -> {}).on(Runtime.getRuntime().availableProcessors());
    assertThat(tally.isAgreed()).as(() -> tally.report(EXAMPLES_SHOWN)).isTrue();
  }

  @Test
  void the_answers_to_random_jobs_are_the_same_on_one_thread_and_on_eight() {
    Tally one = new Run(FIRST_SEED, 200, done -> {}).on(1);
    Tally eight = new Run(FIRST_SEED, 200, done -> {}).on(8);
    assertThat(eight.hash()).isEqualTo(one.hash());
  }

  @Test
  void other_jobs_have_another_hash() {
    Tally some = new Run(FIRST_SEED, 20, done -> {}).on(1);
    Tally others = new Run(FIRST_SEED + 1, 20, done -> {}).on(1);
    assertThat(others.hash()).isNotEqualTo(some.hash());
  }
}
