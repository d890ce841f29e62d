package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressBarTest {

  private final StringWriter written = new StringWriter();

  @Test
  void on_a_terminal_it_says_how_far_the_work_is_and_leaves_the_line_free() {
    ProgressBar progress = bar(true);

    progress.at("camshaft");
    progress.oneDone();
    progress.at("drum");

    assertThat(written.toString().split("\r\u001b\\[2K"))
        .containsExactly(
            "",
            "[..............................] 0 of 2: camshaft",
            "",
            "[###############...............] 1 of 2: drum");
  }

  @Test
  void into_a_file_or_a_pipe_it_writes_nothing() {
    ProgressBar progress = bar(false);

    progress.at("camshaft");
    progress.oneDone();

    assertThat(written.toString()).isEmpty();
  }

  private ProgressBar bar(boolean isShown) {
    return new ProgressBar(new PrintWriter(written), isShown, 2);
  }
}
