package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhyCommandTest {

  private static final String JOB = "../jobs/worn-out-wheel-end.json";

  @Test
  void a_rule_that_does_not_speak_says_which_condition_failed_and_by_how_much() {
    CommandLineRun run = CommandLineRun.of("why", JOB, "axle2/left/camshaft", "CAMSHAFT-020");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains("CAMSHAFT-020")
        .contains("does not speak")
        .contains("limit at least 0.005 in, within by 0.037 in")
        .doesNotContain("another limit");
  }

  @Test
  void every_rule_that_could_concern_the_part_answers_those_that_speak_first() {
    CommandLineRun run = CommandLineRun.of("why", JOB, "axle2/left/camshaft-bushing/head-end");

    assertThat(run.out()).startsWith("axle2/left/camshaft-bushing/head-end: replace\n");
    assertThat(run.out().indexOf("  speaks ")).isLessThan(run.out().indexOf("  does not speak "));
  }

  @Test
  void an_unknown_part_or_rule_is_answered_with_the_nearest_one() {
    assertThat(CommandLineRun.of("why", JOB, "axle2/left/camshafft").err())
        .contains("\"axle2/left/camshafft\" is no part of this job; did you mean");
    CommandLineRun run = CommandLineRun.of("why", JOB, "axle2/left/camshaft", "CAMSHAFT-01");
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("\"CAMSHAFT-01\" is no rule on such a part; did you mean");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          camshaft         | axle2/left/camshaft?
          camshaft-bushing | axle2/left/camshaft-bushing/head-end or axle2/left/camshaft-bushing/spline-end?
          camshaft-bushin  | axle2/left/camshaft-bushing/head-end or axle2/left/camshaft-bushing/spline-end?
          left/camshaf     | axle2/left/camshaft?
          """)
  void a_piece_of_a_path_is_answered_with_the_paths_that_have_it(String piece, String meant) {
    assertThat(CommandLineRun.of("why", JOB, piece).complaints())
        .containsExactly(
            "brake why: \"%s\" is no part of this job; did you mean %s (see brake why --help)"
                .formatted(piece, meant));
  }

  @Test
  void a_file_that_is_not_there_is_told_plainly() {
    CommandLineRun run = CommandLineRun.of("why", "nowhere.json", "axle2/left/camshaft");

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.err()).contains("nowhere.json");
  }
}
