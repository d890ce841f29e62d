package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CasesCommandTest {

  @Test
  void cases_of_one_component_are_run_and_counted() {
    CommandLineRun run = CommandLineRun.of("cases", "camshaft-bushing");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains("ok     camshaft-bushing: ")
        .doesNotContain("camshaft-seal: ")
        .containsPattern("\n[1-9][0-9]* cases, 0 not as expected\n");
  }

  @Test
  void unknown_component_is_answered_with_the_nearest_one() {
    CommandLineRun run = CommandLineRun.of("cases", "camshaft-bushin");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err())
        .contains("\"camshaft-bushin\" has no cases; did you mean camshaft-bushing?");
  }
}
