package org.brakerules.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

  @ParameterizedTest
  @CsvSource({
    "0.030 in,          762000",
    "0.76 mm,           760000",
    "1/16 in,          1587500",
    "5 11/16 in,     144462500",
    "1/64 in,           396875",
    "0.00001 in,           254",
    "0.000001 mm,            1",
    "0 in,                   0",
    "-0.030 in,        -762000",
    "-5 11/16 in,   -144462500",
    "-0 in,                  0",
  })
  void is_read_to_the_nanometre(String text, long nanometres) {
    assertThat(Length.parse(text).nanometres()).isEqualTo(nanometres);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"0.030 in", "0.030in", "0.030   in", " 0.030 in ", "0.030\u00a0in", ".030 in"})
  void blanks_and_the_zero_before_the_point_do_not_matter(String text) {
    assertThat(Length.parse(text)).isEqualTo(new Length(762_000, LengthUnit.INCH));
  }

  @Test
  void thirty_thousandths_of_an_inch_equal_0_762_mm() {
    Length inInches = Length.parse("0.030 in");
    Length inMillimetres = Length.parse("0.762 mm");

    assertThat(inInches).isEqualTo(inMillimetres).hasSameHashCodeAs(inMillimetres);
    assertThat(inInches).isEqualByComparingTo(inMillimetres);
  }

  @Test
  void thirty_thousandths_of_an_inch_are_more_than_0_76_mm() {
    assertThat(Length.parse("0.030 in")).isGreaterThan(Length.parse("0.76 mm"));
    assertThat(Length.parse("0.030 in")).isNotEqualTo(Length.parse("0.76 mm"));
  }

  @Test
  void a_number_alone_is_read_as_inches_or_millimetres() {
    assertThat(Length.inches("5 11/16")).isEqualTo(Length.parse("5 11/16 in"));
    assertThat(Length.millimetres("0.76")).isEqualTo(Length.parse("0.76 mm"));
  }

  @Test
  void every_64th_of_an_inch_is_exact_and_comes_back_from_its_own_text() {
    for (int numerator = 1; numerator < 64; numerator++) {
      Length length = Length.inches(numerator + "/64");

      assertThat(length.nanometres()).isEqualTo(numerator * 396_875L);
      assertThat(Length.parse(length.toString())).isEqualTo(length);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.030 in, 0.010 in, 0.04 in,      0.02 in",
    "0.010 in, 0.030 in, 0.04 in,      -0.02 in",
    "1 in,     1 mm,     26.4 mm,      24.4 mm",
    "1 mm,     1/64 in,  1.396875 mm,  0.603125 mm",
  })
  void sums_and_differences_are_exact(String a, String b, String sum, String difference) {
    assertThat(Length.parse(a).plus(Length.parse(b))).hasToString(sum);
    assertThat(Length.parse(a).minus(Length.parse(b))).hasToString(difference);
  }

  @Test
  void a_difference_may_be_negative_and_loses_its_sign_with_abs() {
    Length difference = Length.parse("0.010 in").minus(Length.parse("0.030 in"));

    assertThat(difference.isNegative()).isTrue();
    assertThat(difference.abs()).isEqualTo(Length.parse("0.020 in"));
    assertThat(difference.abs().isNegative()).isFalse();
    assertThat(Length.parse("0 in").isNegative()).isFalse();
  }

  @Test
  void a_sum_too_large_for_nanometres_is_refused_not_wrapped_around() {
    Length largest = new Length(Long.MAX_VALUE, LengthUnit.MILLIMETRE);
    Length smallest = new Length(Long.MIN_VALUE, LengthUnit.MILLIMETRE);
    Length one = new Length(1, LengthUnit.MILLIMETRE);

    assertThatThrownBy(() -> largest.plus(one))
        .isInstanceOf(QuantityFormatException.class)
        .hasMessage(
            "\"9223372036854.775807 mm plus 0.000001 mm\" is not a length: it is too large to be"
                + " kept exactly. Write a smaller length.");
    assertThatThrownBy(() -> smallest.minus(one))
        .isInstanceOf(QuantityFormatException.class)
        .hasMessageStartingWith("\"-9223372036854.775808 mm minus 0.000001 mm\" is not a length");
    assertThatThrownBy(smallest::abs)
        .isInstanceOf(QuantityFormatException.class)
        .hasMessageStartingWith("\"-9223372036854.775808 mm without its sign\" is not a length");
  }
}
