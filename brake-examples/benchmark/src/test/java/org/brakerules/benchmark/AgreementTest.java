package org.brakerules.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AgreementTest {

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @Test
  void counts_the_jobs_and_ends_with_0_where_both_agree() {
    assertThat(run("--jobs", "20", "--first", "7", "--threads", "2")).isZero();
    assertThat(text(out))
        .startsWith("20 jobs, ")
        .contains(" 0 disagreements, hash of the answers ");
  }

  @Test
  void prints_the_same_on_any_number_of_threads() {
    run("--jobs", "150", "--threads", "1");
    String one = text(out);
    out.reset();
    run("--jobs", "150", "--threads", "3");
    assertThat(text(out)).isEqualTo(one);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--job 5 | \"--job\" is no option.",
        "--jobs | Write a whole number of at most ten digits after --jobs.",
        "--jobs many | Write a whole number of at most ten digits after --jobs.",
        "--jobs 0 | --jobs is 0; write a number from 1 to 1000000000.",
        "--threads 65 | --threads is 65; write a number from 1 to 64.",
        "--examples -1 | --examples is -1; write a number from 0 to 100.",
      })
  void says_what_is_wrong_with_its_options(String options, String message) {
    assertThat(run(options.split(" ", -1))).isEqualTo(2);
    assertThat(text(err)).startsWith(message).contains("Usage: Agreement");
    assertThat(text(out)).isEmpty();
  }

  @Test
  void explains_itself() {
    assertThat(run("--help")).isZero();
    assertThat(text(out)).startsWith("Usage: Agreement");
  }

  private int run(String... options) {
    return Agreement.run(stream(out), stream(err), options);
  }

  private static PrintStream stream(ByteArrayOutputStream to) {
    return new PrintStream(to, true, StandardCharsets.UTF_8);
  }

  private static String text(ByteArrayOutputStream of) {
    return of.toString(StandardCharsets.UTF_8);
  }
}
