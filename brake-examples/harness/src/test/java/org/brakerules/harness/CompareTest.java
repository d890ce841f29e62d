package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One job under two rule sets. */
class CompareTest {

  private static final String JOB = DemoJob.TRACTOR_AND_TRAILER.path();

  /** 85 psi lies inside the federal band of test pressure and below that of Quebec. */
  @Test
  void a_stroke_read_at_the_pressure_of_the_one_rule_set_is_none_under_the_other() {
    CommandLineRun run = CommandLineRun.of("decide", "--compare", "quebec", JOB);
    assertThat(run.exitCode()).isZero();
    assertThat(run.unwrapped())
        .contains("Rule sets us-federal (the job's), quebec")
        .contains("tractor/axle2/right/chamber us-federal reuse; on the road: met")
        .contains("quebec undecided; on the road:");
  }

  /** Clamp 30, standard stroke: 2 in. Virginia rejects what is equal to it. */
  @Test
  void a_stroke_at_the_figure_passes_the_federal_text_and_fails_in_virginia(@TempDir Path folder)
      throws IOException {
    Path job = folder.resolve("at-the-figure.json");
    Files.writeString(job, Files.readString(Path.of(JOB)).replace("1 15/16 in", "2 in"));
    CommandLineRun run = CommandLineRun.of("decide", "--compare", "us-virginia", job.toString());
    assertThat(run.exitCode()).isZero();
    assertThat(run.unwrapped())
        .contains("Rule sets us-federal (the job's), us-virginia")
        .contains("tractor/axle2/right/chamber us-federal reuse; on the road: met")
        .contains("on the road: failed");
  }

  @Test
  void under_its_own_rule_set_nothing_differs() {
    CommandLineRun run = CommandLineRun.of("decide", "--compare", "us-federal", JOB);
    assertThat(run.out()).contains("268 parts, none differs");
  }

  @Test
  void a_rule_set_that_there_is_not_is_answered_with_the_nearest() {
    CommandLineRun run = CommandLineRun.of("decide", "--compare", "quebek", JOB);
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("--compare: found \"quebek\"; did you mean \"quebec\"?");
  }

  @Test
  void a_comparison_is_text() {
    CommandLineRun run = CommandLineRun.of("decide", "--json", "--compare", "quebec", JOB);
    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("--compare prints text; leave --json out");
  }
}
