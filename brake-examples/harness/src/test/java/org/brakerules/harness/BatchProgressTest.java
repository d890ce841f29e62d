package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class BatchProgressTest {

  private static final boolean TERMINAL = true;
  private static final boolean PIPE = false;

  private final StringWriter written = new StringWriter();
  private final AtomicLong clock = new AtomicLong();

  @Test
  void on_a_terminal_a_bar_shows_rate_share_and_time_left() {
    BatchProgress progress = progress(TERMINAL, 4000, 0);

    after(Duration.ofSeconds(10));
    progress.at(500, 1000);

    assertThat(written)
        .hasToString(
            "\r\u001b[2K[#######.......................] 500 lines, 50 a second, 25 %,"
                + " 0 min 30 s left");
  }

  @Test
  void a_bar_is_drawn_five_times_a_second_at_most_and_leaves_the_line_free() {
    BatchProgress progress = progress(TERMINAL, 4000, 0);

    after(Duration.ofMillis(199));
    progress.at(1, 10);
    assertThat(written.toString()).isEmpty();
    after(Duration.ofMillis(1));
    progress.at(2, 20);
    assertThat(written.toString()).contains("2 lines");
    progress.end();
    assertThat(written.toString()).endsWith("\r\u001b[2K");
  }

  @Test
  void elsewhere_a_plain_line_comes_every_ten_seconds() {
    BatchProgress progress = progress(PIPE, 4000, 0);

    after(Duration.ofSeconds(9));
    progress.at(100, 1000);
    after(Duration.ofSeconds(1));
    progress.at(200, 2000);
    progress.end();

    assertThat(written).hasToString("200 lines, 20 a second, 50 %, 0 min 10 s left\n");
  }

  @Test
  void of_an_input_whose_size_nobody_knows_no_time_is_foretold() {
    BatchProgress progress = progress(TERMINAL, 0, 0);

    after(Duration.ofSeconds(1));
    progress.at(500, 1000);

    assertThat(written).hasToString("\r\u001b[2K500 lines, 500 a second");
  }

  @Test
  void the_rate_is_that_of_this_run_and_not_of_lines_that_were_done_before() {
    BatchProgress progress = progress(PIPE, 4000, 1000);

    after(Duration.ofSeconds(10));
    progress.at(1100, 2000);

    assertThat(written.toString()).startsWith("1100 lines, 10 a second, 50 %, 1 min 50 s left");
  }

  @Test
  void long_times_are_told_in_hours() {
    BatchProgress progress = progress(PIPE, 1_000_000, 0);

    after(Duration.ofSeconds(10));
    progress.at(10, 1000);

    assertThat(written.toString()).endsWith("2 h 46 min left\n");
  }

  private void after(Duration time) {
    clock.addAndGet(time.toNanos());
  }

  private BatchProgress progress(boolean isTerminal, long size, long linesBefore) {
    return new BatchProgress(new PrintWriter(written), isTerminal, size, linesBefore, clock::get);
  }
}
