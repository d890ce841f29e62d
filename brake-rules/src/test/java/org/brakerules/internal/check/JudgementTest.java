package org.brakerules.internal.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One reading against one value. */
class JudgementTest {

  @ParameterizedTest
  @CsvSource({
    "AT_MOST,   0.019 in,    WITHIN, 0.001 in",
    "AT_MOST,   0.020 in,    WITHIN, 0 in",
    "AT_MOST,   0.02001 in,  BEYOND, 0.00001 in",
    "AT_MOST,   0.021 in,    BEYOND, 0.001 in",
    "LESS_THAN, 0.01999 in,  WITHIN, 0.00001 in",
    "LESS_THAN, 0.020 in,    BEYOND, 0 in",
    "LESS_THAN, 0.02001 in,  BEYOND, 0.00001 in",
    "AT_LEAST,  0.01999 in,  BEYOND, 0.00001 in",
    "AT_LEAST,  0.020 in,    WITHIN, 0 in",
    "AT_LEAST,  0.021 in,    WITHIN, 0.001 in",
    "MORE_THAN, 0.01999 in,  BEYOND, 0.00001 in",
    "MORE_THAN, 0.020 in,    BEYOND, 0 in",
    "MORE_THAN, 0.02001 in,  WITHIN, 0.00001 in",
    "AT_MOST,   0.508 mm,    WITHIN, 0 in",
    "AT_MOST,   0.508001 mm, BEYOND, 0.000001 mm",
    "AT_LEAST,  0.507999 mm, BEYOND, 0.000001 mm",
    "AT_LEAST,  0.508 mm,    WITHIN, 0 mm",
  })
  void a_reading_beside_a_limit_of_0_020_in(
      Comparison comparison, String value, CheckStatus expected, String margin) {
    Judgement<Length> judgement =
        Judgement.of(reading(value), comparison, Length.parse("0.020 in"));
    assertThat(judgement.status()).isEqualTo(expected);
    assertThat(judgement.margin()).isEqualTo(Length.parse(margin));
  }

  /** Guarded acceptance and guarded rejection of ISO 14253-1 and ILAC-G8, from memory. */
  @ParameterizedTest
  @CsvSource({
    "AT_MOST,   0.018 in,   WITHIN",
    "AT_MOST,   0.019 in,   WITHIN",
    "AT_MOST,   0.01901 in, UNPROVEN",
    "AT_MOST,   0.020 in,   UNPROVEN",
    "AT_MOST,   0.021 in,   UNPROVEN",
    "AT_MOST,   0.02101 in, BEYOND",
    "LESS_THAN, 0.01899 in, WITHIN",
    "LESS_THAN, 0.019 in,   UNPROVEN",
    "LESS_THAN, 0.02099 in, UNPROVEN",
    "LESS_THAN, 0.021 in,   BEYOND",
    "AT_LEAST,  0.021 in,   WITHIN",
    "AT_LEAST,  0.02099 in, UNPROVEN",
    "AT_LEAST,  0.019 in,   UNPROVEN",
    "AT_LEAST,  0.01899 in, BEYOND",
    "MORE_THAN, 0.02101 in, WITHIN",
    "MORE_THAN, 0.021 in,   UNPROVEN",
    "MORE_THAN, 0.01901 in, UNPROVEN",
    "MORE_THAN, 0.019 in,   BEYOND",
  })
  void a_reading_of_plus_or_minus_0_001_in_beside_a_limit_of_0_020_in(
      Comparison comparison, String value, CheckStatus expected) {
    Reading<Length> reading = reading(value).plusOrMinus(Length.parse("0.001 in"));
    assertThat(Judgement.of(reading, comparison, Length.parse("0.020 in")).status())
        .isEqualTo(expected);
  }

  @Test
  void an_uncertainty_larger_than_the_reading_itself_proves_nothing() {
    Reading<Length> reading = reading("0.001 in").plusOrMinus(Length.parse("0.030 in"));
    assertThat(Judgement.of(reading, Comparison.AT_MOST, Length.parse("0.020 in")).status())
        .isEqualTo(CheckStatus.UNPROVEN);
  }

  @Test
  void an_uncertainty_of_nothing_leaves_the_reading_as_it_is() {
    Reading<Length> reading = reading("0.020 in").plusOrMinus(Length.parse("0 in"));
    assertThat(Judgement.of(reading, Comparison.AT_MOST, Length.parse("0.020 in")).status())
        .isEqualTo(CheckStatus.WITHIN);
  }

  @ParameterizedTest
  @CsvSource({"119.9 deg, WITHIN", "120 deg, WITHIN", "120.000001 deg, BEYOND"})
  void an_angle_beside_a_limit_of_120_deg(String value, CheckStatus expected) {
    Angle angle = Angle.parse(value);
    Reading<Angle> reading = Reading.of(angle, Station.WHOLE_PART, Method.PROTRACTOR);
    assertThat(Judgement.of(reading, Comparison.AT_MOST, Angle.parse("120 deg")).status())
        .isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "0.021 in, 0.020 in, true",
    "0.020 in, 0.021 in, false",
    "0.023 in, 0.021 in, true",
    "0.021 in, 0.023 in, false",
    "0.019 in, 0.012 in, true",
    "0.012 in, 0.019 in, false",
    "0.012 in, 0.012 in, false",
  })
  void of_two_judgements_the_one_further_out_is_graver(String one, String other, boolean graver) {
    assertThat(atMost(one).graverThan(atMost(other))).isEqualTo(graver);
  }

  @Test
  void a_reading_that_proves_nothing_is_graver_than_one_within_and_less_than_one_beyond() {
    Judgement<Length> unproven =
        Judgement.of(
            reading("0.020 in").plusOrMinus(Length.parse("0.001 in")),
            Comparison.AT_MOST,
            Length.parse("0.020 in"));
    assertThat(unproven.graverThan(atMost("0.020 in"))).isTrue();
    assertThat(unproven.graverThan(atMost("0.021 in"))).isFalse();
    assertThat(atMost("0.021 in").graverThan(unproven)).isTrue();
  }

  private static Judgement<Length> atMost(String value) {
    return Judgement.of(reading(value), Comparison.AT_MOST, Length.parse("0.020 in"));
  }

  private static Reading<Length> reading(String value) {
    return Reading.of(Length.parse(value), Station.WHOLE_PART, Method.DIAL_INDICATOR);
  }
}
