package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakerules.BrakeRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {

  @Test
  void help_lists_every_command_and_the_exit_codes() {
    CommandLineRun run = CommandLineRun.of("--help");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains(
            "decide",
            "batch",
            "batch",
            "parts",
            "needs",
            "cases",
            "coverage",
            "lint",
            "changes",
            "reference",
            "Exit codes");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "decide",
        "vehicle",
        "parts",
        "plan",
        "sheet",
        "final-check",
        "record",
        "replay",
        "needs",
        "cases",
        "coverage",
        "lint",
        "changes",
        "reference"
      })
  void help_of_every_command_explains_its_exit_codes(String command) {
    CommandLineRun run = CommandLineRun.of(command, "--help");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .startsWith("Usage: brake " + command)
        .contains("Exit codes")
        .containsPattern("\n  2 +wrong usage\n");
  }

  @Test
  void no_command_is_wrong_usage() {
    CommandLineRun run = CommandLineRun.of();

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.complaints())
        .containsExactly(
            "brake: name a command: decide, batch, why, figures, vehicle, parts, plan, sheet, final-check, record, replay, needs, cases, mutate, coverage, lint, changes or reference (see brake --help)");
  }

  @Test
  void misspelt_command_is_answered_with_the_nearest_one() {
    CommandLineRun run = CommandLineRun.of("decid");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("did you mean decide or ");
  }

  @Test
  void version_names_the_rule_base() {
    assertThat(CommandLineRun.of("--version").out())
        .contains(BrakeRules.standard().version().fingerprint());
  }
}
