package org.brakerules.calc.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.brakerules.calc.Basis;
import org.brakerules.calc.LengthText;
import org.brakerules.calc.Working;
import org.brakerules.calc.wear.LiningLife.WearPoint;
import org.brakerules.calc.wear.LiningThickness.AtPlace;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;

class WearTest {

  private static final Basis BASIS = Basis.exact(Standing.GOVERNMENT, "TM 9-2330-384-14&P");

  @Test
  void six_readings_show_where_a_lining_is_thin() {
    LiningThickness lining = lining("0.41 0.40", "0.52 0.55", "0.60 0.61");
    assertThat(lining.thinnest()).isEqualTo(Length.inches("0.40"));
    assertThat(lining.taper()).isEqualTo(Length.inches("0.20"));
    assertThat(lining.acrossEdges()).isEqualTo(Length.inches("0.03"));
  }

  @Test
  void the_shoes_of_a_wheel_are_held_against_each_other_by_their_thinnest() {
    LiningThickness upper = lining("0.41 0.40", "0.52 0.55", "0.60 0.61");
    LiningThickness lower = lining("0.50 0.50", "0.31 0.32", "0.55 0.55");
    assertThat(ShoeDifference.of(upper, lower).difference()).isEqualTo(Length.inches("0.09"));
    assertThat(ShoeDifference.of(lower, upper).difference()).isEqualTo(Length.inches("0.09"));
  }

  @Test
  void a_drum_is_as_wide_as_its_widest_and_out_of_round_at_one_depth() {
    DrumBore bore =
        DrumBore.of(
            inches("16.590 16.592 16.591 16.590"),
            inches("16.600 16.612 16.604 16.601"),
            inches("16.580 16.580 16.581 16.580"));
    assertThat(bore.largest()).isEqualTo(Length.inches("16.612"));
    assertThat(bore.outOfRound()).isEqualTo(Length.inches("0.012"));
    assertThat(bore.taper()).isEqualTo(Length.inches("0.011"));
  }

  @Test
  void one_diameter_cannot_show_whether_a_drum_is_round() {
    List<Length> two = inches("16.5 16.6");
    assertThat(DrumBore.of(two, two, two).outOfRound()).isEqualTo(Length.inches("0.1"));
    assertThatThrownBy(() -> DrumBore.of(two, inches("16.5"), two))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least two diameters");
  }

  /** Check case C42: 16.585 in is past 16.580 (TM 9-2330-384-14&P) and inside 16.59 in. */
  @ParameterizedTest
  @CsvSource({"16.580 in, -0.005 in", "16.585 in, 0 in", "16.59 in, 0.005 in"})
  void what_may_still_be_turned_depends_on_whose_limit_it_is(
      @ConvertWith(LengthText.class) Length limit, String left) {
    Working working = DrumBore.leftToTurn(Length.inches("16.585"), limit, BASIS);
    assertThat(working.results()).contains(new Working.Named("left on the diameter", left));
    assertThat(working.results()).hasSize(left.equals("0.005 in") ? 1 : 2);
  }

  /** 4 mm in 40,000 km leave 20,000 km for 2 mm; own arithmetic. */
  @Test
  void a_lining_runs_on_as_it_wore_and_not_a_promise_further() {
    LiningLife life = life("14 mm", 10_000, "10 mm", 50_000, "0.5 mm");
    assertThat(life.likely()).isEqualByComparingTo("20000");
    assertThat(life.shortest()).isEqualByComparingTo("12000");
  }

  @Test
  void limits_and_uncertainties_that_cannot_be_are_refused() {
    assertThatThrownBy(() -> life("0 mm", "10 mm", "0 mm")).hasMessageStartingWith("No limit of 0");
    assertThatThrownBy(() -> life("8 mm", "10 mm", "-1 mm"))
        .hasMessageContaining("no uncertainty of -1 mm");
    assertThatThrownBy(() -> life("8 mm", "-1 mm", "0 mm")).hasMessageContaining("no lining of -1");
    assertThat(life("8 mm", "0 mm", "0 mm").likely()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "8.1 mm, about 0 to 677 km",
    "8 mm,   none: the lining is at its limit or past it",
    "7.9 mm, none: the lining is at its limit or past it",
  })
  void a_distance_is_given_only_to_a_lining_above_its_limit(String now, String distance) {
    assertThat(life("14 mm", 10_000, now, 50_000, "0.5 mm").working().results())
        .containsExactly(new Working.Named("distance", distance));
  }

  @Test
  void a_lining_at_its_limit_runs_no_further() {
    assertThat(life("14 mm", 10_000, "8 mm", 50_000, "0.5 mm").likely()).isZero();
    assertThat(life("14 mm", 10_000, "8.3 mm", 50_000, "0.5 mm").shortest()).isZero();
  }

  @Test
  void readings_that_do_not_go_on_are_refused() {
    assertThatThrownBy(() -> life("14 mm", 10_000, "10 mm", 10_000, "0 mm"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> life("10 mm", 10_000, "10 mm", 50_000, "0 mm"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must be above zero");
  }

  private static LiningLife life(String limit, String now, String uncertainty) {
    return LiningLife.of(
        new WearPoint(Length.parse("14 mm"), BigDecimal.ONE),
        new WearPoint(Length.parse(now), BigDecimal.TEN),
        Length.parse(limit),
        Length.parse(uncertainty),
        "km");
  }

  private static LiningLife life(
      String before, int atBefore, String now, int atNow, String uncertainty) {
    return LiningLife.of(
        new WearPoint(Length.parse(before), BigDecimal.valueOf(atBefore)),
        new WearPoint(Length.parse(now), BigDecimal.valueOf(atNow)),
        Length.parse("8 mm"),
        Length.parse(uncertainty),
        "km");
  }

  private static LiningThickness lining(String camEnd, String centre, String anchorEnd) {
    return LiningThickness.of(place(camEnd), place(centre), place(anchorEnd));
  }

  private static AtPlace place(String edges) {
    List<Length> both = inches(edges);
    return new AtPlace(both.get(0), both.get(1));
  }

  private static List<Length> inches(String numbers) {
    return Arrays.stream(numbers.split(" ")).map(Length::inches).toList();
  }
}
