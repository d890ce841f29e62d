package org.brakerules.calc.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.brakerules.calc.LengthText;
import org.brakerules.model.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.converter.ConvertWith;
import org.junit.jupiter.params.provider.CsvSource;

class ClevisPinFitTest {

  private static final ClevisPinSize HALF_INCH = ClevisPinSize.of(Length.parse("1/2 in"));

  /** Check case C16: ASME B18.8.1-1994, read in its table; the hole tolerance is our own. */
  @Test
  void a_new_half_inch_pin_in_a_hole_of_five_thousandths_has_four_to_fourteen_of_play() {
    assertThat(HALF_INCH.thinnest()).isEqualTo(Length.parse("0.491 in"));
    assertThat(HALF_INCH.thickest()).isEqualTo(Length.parse("0.496 in"));
    assertThat(HALF_INCH.cotter()).isEqualTo(Length.parse("1/8 in"));
    assertThat(HALF_INCH.smallestCotterHole()).isEqualTo(Length.parse("0.136 in"));
    assertThat(HALF_INCH.largestCotterHole()).isEqualTo(Length.parse("0.151 in"));
    assertThat(ClevisPinFit.leastNewClearance(HALF_INCH, Length.parse("0.500 in")))
        .isEqualTo(Length.parse("0.004 in"));
    assertThat(ClevisPinFit.mostNewClearance(HALF_INCH, Length.parse("0.505 in")))
        .isEqualTo(Length.parse("0.014 in"));
  }

  /** ASME B18.8.1-1994, read in its table: shanks of other sizes. */
  @ParameterizedTest(name = "a pin of {0}: {1} to {2}, cotter pin {3}")
  @CsvSource({
    "3/16 in, 0.181 in, 0.186 in, 1/16 in",
    "1/4 in,  0.243 in, 0.248 in, 1/16 in",
    "5/8 in,  0.616 in, 0.621 in, 1/8 in",
    "1 in,    0.991 in, 0.996 in, 5/32 in",
  })
  void the_standard_gives_shank_and_cotter_pin(
      @ConvertWith(LengthText.class) Length nominal,
      @ConvertWith(LengthText.class) Length thinnest,
      @ConvertWith(LengthText.class) Length thickest,
      @ConvertWith(LengthText.class) Length cotter) {
    ClevisPinSize size = ClevisPinSize.of(nominal);
    assertThat(size.thinnest()).isEqualTo(thinnest);
    assertThat(size.thickest()).isEqualTo(thickest);
    assertThat(size.cotter()).isEqualTo(cotter);
  }

  @Test
  void the_standard_has_ten_sizes_each_with_a_shank_thinner_than_its_name() {
    assertThat(ClevisPinSize.all())
        .hasSize(10)
        .allSatisfy(
            size -> {
              assertThat(size.thickest()).isLessThan(size.nominal());
              assertThat(size.thickest().minus(size.thinnest()))
                  .isEqualTo(Length.parse("0.005 in"));
              assertThat(size.smallestCotterHole()).isGreaterThan(size.cotter());
            });
  }

  @Test
  void a_size_the_standard_does_not_have_is_told() {
    assertThatThrownBy(() -> ClevisPinSize.of(Length.parse("0.55 in")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("No clevis pin of 0.55 in");
  }

  @Test
  void both_diameters_tell_whose_wear_it_is() {
    ClevisPinFit fit = fit("0.486", "0.508", "0.505");
    assertThat(fit.clearance()).hasValue(Length.parse("0.022 in"));
    assertThat(fit.pinWear()).hasValue(Length.parse("0.005 in"));
    assertThat(fit.holeWear()).hasValue(Length.parse("0.003 in"));
    assertThat(fit.working().missing()).isEmpty();
  }

  @Test
  void a_pin_as_thick_as_the_thinnest_new_one_is_not_worn() {
    assertThat(fit("0.491", "0.505", "0.505").pinWear()).hasValue(Length.parse("0 in"));
    assertThat(fit("0.4909", "0.505", "0.505").pinWear()).hasValue(Length.parse("0.0001 in"));
  }

  @Test
  void one_diameter_gives_part_of_the_answer_and_names_the_other() {
    ClevisPinFit fit =
        ClevisPinFit.of(
            HALF_INCH, Optional.of(Length.parse("0.486 in")), Optional.empty(), Optional.empty());
    assertThat(fit.pinWear()).hasValue(Length.parse("0.005 in"));
    assertThat(fit.clearance()).isEmpty();
    assertThat(fit.working().missing())
        .containsExactly("diameter of the hole", "widest new hole, by its maker");
  }

  @Test
  void a_pin_that_does_not_go_into_its_hole_was_misread() {
    assertThatThrownBy(() -> fit("0.510", "0.505", "0.505"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("measure both again");
  }

  @Test
  void a_pin_as_thick_as_its_hole_has_no_play() {
    assertThat(fit("0.496", "0.496", "0.505").clearance()).hasValue(Length.parse("0 in"));
  }

  private static ClevisPinFit fit(String pin, String hole, String widestNewHole) {
    return ClevisPinFit.of(
        HALF_INCH,
        Optional.of(Length.inches(pin)),
        Optional.of(Length.inches(hole)),
        Optional.of(Length.inches(widestNewHole)));
  }
}
