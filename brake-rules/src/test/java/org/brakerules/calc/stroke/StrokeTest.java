package org.brakerules.calc.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.brakerules.calc.LengthText;
import org.brakerules.calc.Working;
import org.brakerules.calc.trust.ReadingAgainstLimit;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;

class StrokeTest {

  private static final Source LAW =
      new Source("US-49-CFR-393.47", "(e)(1)", "Adequacy of brake components", Standing.LAW);

  /** Check cases C01 to C03: a province's air brake manual, the worked example of a type 30. */
  @Test
  void heat_and_wear_bottom_out_a_stroke_that_was_good_when_cold() {
    StrokeReserve reserve = StrokeReserve.of(Length.inches("2.5"), Length.inches("1.75"));
    assertThat(reserve.cold()).isEqualTo(Length.inches("0.75"));
    assertThat(reserve.hot().value()).isEqualTo(Length.inches("0.25"));
    assertThat(reserve.hotAndWorn().value()).isEqualTo(Length.inches("0"));
  }

  @ParameterizedTest
  @CsvSource({"1.74, false", "1.75, true", "1.76, true"})
  void a_rod_that_has_no_travel_left_is_told(String applied, boolean told) {
    String text = StrokeReserve.of(Length.inches("2.5"), Length.inches(applied)).working().asText();
    assertThat(text.contains("at the end of its travel")).isEqualTo(told);
  }

  /** Check case C04: trade press article 1003111932. */
  @Test
  void free_and_power_stroke_leave_the_margin_the_trade_press_names() {
    Length applied = Length.inches("0.66").plus(Length.inches("1.15"));
    PowerStroke power = PowerStroke.of(applied, Length.inches("0.66"));
    ReadingAgainstLimit<Length> margin =
        against(applied, Comparison.AT_MOST, Length.inches("2.00"));
    assertThat(power.stroke()).isEqualTo(Length.inches("1.15"));
    assertThat(margin.margin()).isEqualTo(Length.inches("0.19"));
    assertThat(margin.status()).isEqualTo(CheckStatus.WITHIN);
  }

  /** Check case C05: 49 CFR 393.47(e)(1), and 19VAC30-70-440 D 2 which rejects at the limit. */
  @ParameterizedTest(name = "{0} against {1} 2 in: {2}")
  @CsvSource({
    "1.99 in, AT_MOST,   true",
    "2 in,    AT_MOST,   true",
    "2.01 in, AT_MOST,   false",
    "1.99 in, LESS_THAN, true",
    "2 in,    LESS_THAN, false",
    "2.01 in, LESS_THAN, false",
  })
  void a_stroke_at_the_limit_passes_a_law_that_says_at_most(
      @ConvertWith(LengthText.class) Length stroke, Comparison comparison, boolean passes) {
    assertThat(against(stroke, comparison, Length.inches("2")).status())
        .isEqualTo(passes ? CheckStatus.WITHIN : CheckStatus.BEYOND);
  }

  @ParameterizedTest
  @CsvSource({"0.75 in, 0.75 in", "0.5 in, 0.75 in", "0 in, 0 in"})
  void an_applied_stroke_no_longer_than_the_free_one_was_misread(
      @ConvertWith(LengthText.class) Length applied, @ConvertWith(LengthText.class) Length free) {
    assertThatThrownBy(() -> PowerStroke.of(applied, free))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("measure both again");
  }

  /** Check case C15's worksheet, its formula for the stroke; the numbers are our own. */
  @Test
  void a_hot_brake_needs_more_stroke_the_longer_it_is_applied() {
    Length measured = Length.inches("1.75");
    Length heat = Length.inches("0.1");
    assertThat(StrokeWhileBraking.of(measured, heat, new BigDecimal("10")).stroke().value())
        .isEqualTo(Length.inches("2.24"));
    assertThat(StrokeWhileBraking.of(measured, heat, BigDecimal.ZERO).stroke().value())
        .isEqualTo(Length.inches("1.9"));
    assertThatThrownBy(() -> StrokeWhileBraking.of(measured, heat, BigDecimal.ONE.negate()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Check cases C11 and C12, the published criterion of a fifth; halves are from memory. */
  @ParameterizedTest(name = "{0} brakes, beyond by {1}: {2} defective, a fifth {3}")
  @CsvSource({
    "10, 0.25 0.30,           2, true",
    "10, 0.25,                1, false",
    "10, 0.24 0.24 0.25,      2, true",
    "10, 0.24 0.24 0.24,      1, false",
    "6,  0.5,                 1, false",
    "6,  0.5 0.24 0.24,       2, true",
    "12, 0.5 0.5,             2, false",
    "12, 0.5 0.5 0.5,         3, true",
    "4,  0.25,                1, true",
    "4,  '',                  0, false",
    "1,  0.25,                1, true",
  })
  void two_brakes_a_little_beyond_count_as_one(
      int brakes, String beyond, int counted, boolean aFifth) {
    List<Length> over =
        Arrays.stream(beyond.split(" ")).filter(one -> !one.isEmpty()).map(Length::inches).toList();
    DefectiveBrakes defective = DefectiveBrakes.of(brakes, over);
    assertThat(defective.counted()).isEqualTo(counted);
    assertThat(defective.isAFifth()).isEqualTo(aFifth);
    assertThat(defective.working().results())
        .containsExactly(
            new Working.Named(
                "defective",
                "%d of the %d that make a fifth of these brakes: %s"
                    .formatted(counted, defective.needed(), aFifth ? "reached" : "not reached")));
  }

  /** oos-20-percent: brakes needed by number of brakes, the ceiling of a fifth. */
  @ParameterizedTest
  @CsvSource({"2,1", "5,1", "6,2", "10,2", "11,3", "15,3", "16,4", "20,4", "21,5", "30,6"})
  void a_fifth_is_rounded_up(int brakes, int needed) {
    assertThat(DefectiveBrakes.of(brakes, List.of()).needed()).isEqualTo(needed);
  }

  @Test
  void a_brake_inside_its_limit_is_none_beyond_it() {
    assertThatThrownBy(() -> DefectiveBrakes.of(4, List.of(Length.inches("0"))))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> DefectiveBrakes.of(1, List.of(Length.inches("0.1"), Length.inches("0.1"))))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> DefectiveBrakes.of(0, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static ReadingAgainstLimit<Length> against(
      Length stroke, Comparison comparison, Length limit) {
    Reading<Length> reading = Reading.of(stroke, Station.WHOLE_PART, Method.FULL_APPLICATION);
    return ReadingAgainstLimit.of("applied stroke", reading, comparison, limit, LAW);
  }
}
