package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MutateCommandTest {

  @Test
  void the_changes_of_one_component_are_counted_and_the_unnoticed_ones_listed() {
    CommandLineRun run = CommandLineRun.of("mutate", "hose");

    assertThat(run.out())
        .containsPattern(
            "hose: [0-9]+ changes, 0 refused by the tables, [0-9]+ equivalent, 0 not noticed\n")
        .containsPattern("\n[0-9]+ changes, [0-9]+ equivalent, 0 not noticed\n$");
    assertThat(run.exitCode()).isEqualTo(0);
  }

  @Test
  void unknown_component_is_answered_with_the_nearest_one() {
    CommandLineRun run = CommandLineRun.of("mutate", "hoose");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("\"hoose\" is no component; did you mean hose?");
  }
}
