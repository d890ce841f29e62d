package org.brakerules.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OracleAgreesTest {

  private static final int JOBS = Integer.getInteger("brakerules.jobs", 2000);
  private static final long FIRST_SEED = Long.getLong("brakerules.seed", 1);
  private static final int EXAMPLES_SHOWN = 10;

  @Test
  void rule_base_and_oracle_decide_random_jobs_alike() {
    Tally tally = Tally.of(JOBS, FIRST_SEED);
    assertThat(tally.isAgreed()).as(() -> tally.report(EXAMPLES_SHOWN)).isTrue();
  }
}
