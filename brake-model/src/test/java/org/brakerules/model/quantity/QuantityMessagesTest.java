package org.brakerules.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a technician reads when a quantity is written wrong. */
class QuantityMessagesTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          0.030      | the unit is missing                | "0.030 in" or "0.030 mm"
          5 11/16    | the unit is missing                | "5 11/16 in"
          0.03 inch  | the unit "inch" is not known       | "0.03 in"
          3 ins      | the unit "ins" is not known        | "3 in"
          3"         | the unit ""\" is not known          | "3 in"
          0.76 MM    | the unit "MM" is not known         | "0.76 mm"
          3 IN       | the unit "IN" is not known         | "3 in"
          3 mmm      | the unit "mmm" is not known, the nearest is "mm" | a length with the unit in or mm, such as "0.030 in"
          3 cm       | the unit "cm" is not known         | a length with the unit in or mm, such as "0.030 in"
          3 ft       | the unit "ft" is not known         | a length with the unit in or mm, such as "0.030 in"
          3 in mm    | the unit "in mm" is not known      | a length with the unit in or mm, such as "0.030 in"
          80 psi     | psi is a unit of pressure          | a length with the unit in or mm, such as "0.030 in"
          5 deg      | deg is a unit of angle             | a length with the unit in or mm, such as "0.030 in"
          """)
  void the_unit_of_a_length_is_missing_unknown_or_of_another_kind(
      String text, String wrong, String expected) {
    assertRefused(Length.class, text, wrong, expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          0,76 mm    | it has a decimal comma             | "0.76 mm"
          -0,76 mm   | it has a decimal comma             | "-0.76 mm"
          0,030 in   | it has a decimal comma             | "0.030 in"
          0,76       | it has a decimal comma             | "0.76 in" or "0.76 mm"
          0,76 MM    | it has a decimal comma             | "0.76 mm"
          1,200 mm   | its comma may be a decimal comma or separate thousands | "1200 mm" or "1.200 mm"
          1,200.5 mm | it has a comma                     | a number without commas, such as "0.030 in"
          0.0.3 in   | it has more than one decimal point | one decimal point, as in "0.030"
          +0.03 in   | it has a plus sign                 | "0.03 in"
          --0.03 in  | it has more than one sign          | "0.03 in", or for a difference "-0.03 in"
          +-0.03 in  | it has more than one sign          | "0.03 in", or for a difference "-0.03 in"
          - -0.03 in | it has more than one sign          | "0.03 in", or for a difference "-0.03 in"
          1e-3 in    | powers of ten are not read         | the number in full, such as "0.030 in"
          1.5 E3 mm  | powers of ten are not read         | the number in full, such as "0.030 in"
          1e999999999 in | powers of ten are not read     | the number in full, such as "0.030 in"
          in         | the number is missing              | a length with the unit in or mm, such as "0.030 in"
          thin       | the number is missing              | a length with the unit in or mm, such as "0.030 in"
          5. in      | the number "5." cannot be read     | a length with the unit in or mm, such as "0.030 in"
          5.5 1/2 in | the number "5.5 1/2" cannot be read | a length with the unit in or mm, such as "0.030 in"
          1 000 mm   | the number "1 000" cannot be read  | a length with the unit in or mm, such as "0.030 in"
          - in       | the number "-" cannot be read      | a length with the unit in or mm, such as "0.030 in"
          1-2 in     | it is a range                      | one value, such as "0.030 in"
          """)
  void the_number_is_written_wrong(String text, String wrong, String expected) {
    assertRefused(Length.class, text, wrong, expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          NaN        | it is not a number | a length with the unit in or mm, such as "0.030 in", or say that the measurement was not taken
          NaN in     | it is not a number | a length with the unit in or mm, such as "0.030 in", or say that the measurement was not taken
          Infinity   | it is not a number | a length with the unit in or mm, such as "0.030 in", or say that the measurement was not taken
          -inf mm    | it is not a number | a length with the unit in or mm, such as "0.030 in", or say that the measurement was not taken
          ``         | it is empty        | a length with the unit in or mm, such as "0.030 in"
          """)
  void there_is_no_number_at_all(String text, String wrong, String expected) {
    assertRefused(Length.class, text, wrong, expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          1/0 in     | a fraction over 0 has no value     | a fraction over 2, 4, 8, 16, 32 or 64, or a decimal
          1/128 in   | fractions over 128 are not kept    | a fraction over 2, 4, 8, 16, 32 or 64, or a decimal
          1/10 in    | fractions over 10 are not kept     | a fraction over 2, 4, 8, 16, 32 or 64, or a decimal
          3/4/5 in   | it has more than one fraction line | one fraction, such as 3/4, or a decimal
          17/16 in   | its fraction is not below 1        | "1 1/16 in"
          2/2 in     | its fraction is not below 1        | "1 in"
          5 32/16 in | its fraction is not below 1        | "7 in"
          -5 17/16 in | its fraction is not below 1       | "-6 1/16 in"
          5-11/16 in | it has a dash between whole number and fraction | "5 11/16 in"
          1/2 mm     | mm takes no fractions              | "0.5 mm"
          -3 1/4 mm  | mm takes no fractions              | "-3.25 mm"
          """)
  void the_fraction_is_not_one_the_trade_uses(String text, String wrong, String expected) {
    assertRefused(Length.class, text, wrong, expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          0.000001 in      | it is finer than what is kept exactly | no more than 5 decimal places
          0.030001 in      | it is finer than what is kept exactly | no more than 5 decimal places
          0.0000001 in     | it has more than 6 decimal places     | no more than 6 decimal places
          0.0000001 mm     | it has more than 6 decimal places     | no more than 6 decimal places
          1234567890123 mm | it has more than 12 digits            | no more than 12 digits
          123456.1234567 mm | it has more than 12 digits           | no more than 12 digits
          0000000000001 mm | it has more than 12 digits            | no more than 12 digits
          999999999999 in  | it is too large to be kept exactly    | a smaller length
          """)
  void the_length_is_too_fine_or_too_large_to_be_kept(String text, String wrong, String expected) {
    assertRefused(Length.class, text, wrong, expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          30    | the unit is missing             | "30 lbf", "30 N" or "30 kN"
          30 lb | the unit "lb" is not known      | "30 lbf"
          30 kn | the unit "kn" is not known      | "30 kN"
          30 in | in is a unit of length          | a force with the unit lbf, N or kN, such as "30 lbf"
          1/2     | the unit is missing           | a force with the unit lbf, N or kN, such as "30 lbf"
          1/2 lbf | lbf takes no fractions        | "0.5 lbf"
          """)
  void a_force_is_written_wrong(String text, String wrong, String expected) {
    assertRefused(Force.class, text, wrong, expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          15          | the unit is missing             | "15 lbf.in", "15 lbf.ft" or "15 N.m"
          15 ft-lbs   | the unit "ft-lbs" is not known  | "15 lbf.ft"
          15 lb-ft    | the unit "lb-ft" is not known   | "15 lbf.ft"
          15 in lb    | the unit "in lb" is not known   | "15 lbf.in"
          20 Nm       | the unit "Nm" is not known      | "20 N.m"
          20 N·m      | the unit "N·m" is not known     | "20 N.m"
          20 N.mm     | the unit "N.mm" is not known, the nearest is "N.m" | a torque with the unit lbf.in, lbf.ft or N.m, such as "15 lbf.ft"
          15-20 lbf.ft | it is a range                  | one value, such as "15 lbf.ft"
          """)
  void a_torque_is_written_wrong(String text, String wrong, String expected) {
    assertRefused(Torque.class, text, wrong, expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          90      | the unit is missing           | "90 psi", "90 kPa" or "90 bar"
          90 PSI  | the unit "PSI" is not known   | "90 psi"
          620 kpa | the unit "kpa" is not known   | "620 kPa"
          0.62 MPa | the unit "MPa" is not known, the nearest is "kPa" | a pressure with the unit psi, kPa or bar, such as "90 psi"
          """)
  void a_pressure_is_written_wrong(String text, String wrong, String expected) {
    assertRefused(Pressure.class, text, wrong, expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          45        | the unit is missing             | "45 deg" or "45 turn"
          45°       | the unit "°" is not known       | "45 deg"
          1/2 turns | the unit "turns" is not known   | "1/2 turn"
          1/2 deg   | deg takes no fractions          | "0.5 deg"
          1/3 turn  | fractions over 3 are not kept   | a fraction over 2, 4, 8, 16, 32 or 64, or a decimal
          999999999999 turn | it is too large to be kept exactly | a smaller angle
          """)
  void an_angle_is_written_wrong(String text, String wrong, String expected) {
    assertRefused(Angle.class, text, wrong, expected);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          50         | the unit is missing             | "50 %"
          50 percent | the unit "percent" is not known | "50 %"
          50 mm      | mm is a unit of length          | a share with the unit %, such as "50 %"
          """)
  void a_share_is_written_wrong(String text, String wrong, String expected) {
    assertRefused(Share.class, text, wrong, expected);
  }

  @Test
  void an_overlong_text_is_refused_at_once_and_not_repeated_in_full() {
    String text = "9".repeat(1_000_000) + " in";

    QuantityFormatException refusal = refusalOf(Length.class, text);

    assertThat(refusal)
        .hasMessage(
            "\"%s...\" is not a length: it is longer than 60 characters. Write a length with the"
                + " unit in or mm, such as \"0.030 in\".",
            "9".repeat(60));
    assertThat(refusal.found()).isEqualTo(text);
  }

  @Test
  void a_text_of_sixty_characters_is_read_and_repeated_in_full() {
    String digits = "9".repeat(57) + " in";

    assertThat(Length.parse("0.030" + " ".repeat(53) + "in")).isEqualTo(Length.parse("0.030 in"));
    assertThat(refusalOf(Length.class, digits))
        .hasMessageStartingWith("\"" + digits + "\" is not a length: it has more than 12 digits.");
  }

  @Test
  void a_message_shows_no_control_characters() {
    assertThat(refusalOf(Length.class, "3 in\u0007")).hasMessageStartingWith("\"3 in?\" is not");
  }

  @ParameterizedTest
  @CsvSource({"0.030 in", "0.030 IN", "'0,030'"})
  void a_number_of_millimetres_with_another_unit_is_refused(String number) {
    assertThat(
            catchThrowableOfType(QuantityFormatException.class, () -> Length.millimetres(number)))
        .hasMessageStartingWith("\"" + number + "\" is not a length: ");
  }

  @Test
  void a_number_of_inches_that_brings_its_unit_is_told_to_leave_it_out() {
    assertThat(catchThrowableOfType(QuantityFormatException.class, () -> Length.inches("0.030 in")))
        .hasMessage(
            "\"0.030 in\" is not a length: only the number of in is expected here. Write no unit.");
  }

  private static <Q extends Quantity<Q>> void assertRefused(
      Class<Q> type, String text, String wrong, String expected) {
    QuantityFormatException refusal = refusalOf(type, text);
    String kind =
        type == Angle.class ? "an angle" : "a " + type.getSimpleName().toLowerCase(Locale.ROOT);

    assertThat(refusal)
        .hasMessage("\"%s\" is not %s: %s. Write %s.".formatted(text, kind, wrong, expected));
    assertThat(refusal.found()).isEqualTo(text);
    assertThat(refusal.wrong()).isEqualTo(wrong);
    assertThat(refusal.expected()).isEqualTo(expected);
  }

  private static <Q extends Quantity<Q>> QuantityFormatException refusalOf(
      Class<Q> type, String text) {
    return catchThrowableOfType(QuantityFormatException.class, () -> Quantities.parse(type, text));
  }
}
