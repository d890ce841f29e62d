package org.brakerules.benchmark.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.brakerules.benchmark.result.Target.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TargetTest {

  @ParameterizedTest(name = "at most 6, stretch 3: {0} is {1}")
  @CsvSource({"6.01, NOT_REACHED", "6, REACHED", "3.01, REACHED", "3, STRETCH"})
  void where_less_is_better(double value, Outcome outcome) {
    assertThat(Target.atMost(6, 3).outcome(Measured.counted(value))).isEqualTo(outcome);
  }

  @ParameterizedTest(name = "at least 1.8, stretch 1.9: {0} is {1}")
  @CsvSource({"1.79, NOT_REACHED", "1.8, REACHED", "1.89, REACHED", "1.9, STRETCH"})
  void where_more_is_better(double value, Outcome outcome) {
    assertThat(Target.atLeast(1.8, 1.9).outcome(Measured.counted(value))).isEqualTo(outcome);
  }

  @ParameterizedTest(name = "at most 6, stretch 3: {0} with an error of {1} is {2}")
  @CsvSource({
    "2, 1, STRETCH",
    "2, 1.1, REACHED",
    "5, 1, REACHED",
    "5, 1.1, UNCERTAIN",
    "7, 1, UNCERTAIN",
    "7, 0.9, NOT_REACHED"
  })
  void what_the_error_leaves_open_is_not_claimed(double value, double error, Outcome outcome) {
    assertThat(Target.atMost(6, 3).outcome(new Measured(value, error))).isEqualTo(outcome);
  }

  @ParameterizedTest(name = "at least 1.8: {0} with an error of {1} is {2}")
  @CsvSource({"1.85, 0.05, REACHED", "1.85, 0.06, UNCERTAIN", "1.7, 0.09, NOT_REACHED"})
  void nor_where_more_is_better(double value, double error, Outcome outcome) {
    assertThat(Target.atLeast(1.8, 1.9).outcome(new Measured(value, error))).isEqualTo(outcome);
  }

  @Test
  void where_nothing_lies_beyond_it_is_reached_or_not() {
    assertThat(Target.atMost(0).outcome(Measured.counted(0))).isEqualTo(Outcome.REACHED);
    assertThat(Target.atMost(0).outcome(Measured.counted(1))).isEqualTo(Outcome.NOT_REACHED);
  }

  /** By the table of Student's t: 4.303 for two degrees of freedom. */
  @Test
  void error_is_that_of_the_mean_of_the_rounds() {
    Measured measured = Measured.of(List.of(1.0, 2.0, 3.0));

    assertThat(measured.value()).isEqualTo(2);
    assertThat(measured.error()).isEqualTo(4.303 / Math.sqrt(3), within(0.001));
  }

  @Test
  void one_round_is_refused() {
    assertThatThrownBy(() -> Measured.of(List.of(1.0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("two at least");
  }
}
