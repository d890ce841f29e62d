package org.brakerules.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConversionTest {

  @Test
  @DisplayName("36 ft = 10.9728 m (NIST SP 811 B.7.2, verified in a copy)")
  void thirty_six_feet() {
    Length thirtySixFeet = Length.inches("432");

    assertThat(thirtySixFeet.format(LengthUnit.MILLIMETRE)).isEqualTo("10972.8 mm");
    assertThat(thirtySixFeet).isEqualTo(Length.millimetres("10972.8"));
  }

  @ParameterizedTest(name = "{0} = {1} = {2}")
  @DisplayName(
      "A pawl screw at 15-20 lb-ft: 180-240 lb-in, 20.3-27.1 N.m within 0.1"
          + " (TM 5-3825-229-14&P, TM 9-2320-302-20-2, verified)")
  @CsvSource({"15 lbf.ft, 180 lbf.in, 20.3", "20 lbf.ft, 240 lbf.in, 27.1"})
  void pawl_screw_torque(String inFeet, String inInches, BigDecimal newtonMetres) {
    Torque torque = Torque.parse(inFeet);

    assertThat(torque).isEqualTo(Torque.parse(inInches));
    assertThat(torque).hasSameHashCodeAs(Torque.parse(inInches));
    assertThat(torque.newtonMetres().setScale(1, RoundingMode.HALF_EVEN))
        .isEqualByComparingTo(newtonMetres);
  }

  @Test
  @DisplayName("1 in = 25.4 mm and 1 lb = 0.45359237 kg (agreement of 1959, from memory)")
  void inch_and_pound() {
    assertThat(Length.parse("1 in")).isEqualTo(Length.parse("25.4 mm"));
    assertThat(Force.parse("1 lbf").newtons())
        .isEqualByComparingTo(new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665")));
  }

  @Test
  void units_of_one_system_are_whole_multiples_of_each_other() {
    assertThat(Force.parse("1 kN")).isEqualTo(Force.parse("1000 N"));
    assertThat(Torque.parse("1 lbf.ft")).isEqualTo(Torque.parse("12 lbf.in"));
    assertThat(Pressure.parse("1 bar")).isEqualTo(Pressure.parse("100 kPa"));
    assertThat(Angle.parse("1 turn")).isEqualTo(Angle.parse("360 deg"));
    assertThat(Angle.parse("1/64 turn")).isEqualTo(Angle.parse("5.625 deg"));
  }

  @ParameterizedTest(name = "{0} in {1} is {2}")
  @CsvSource({
    "1 lbf,    NEWTON,           about 4.4482 N",
    "1 N,      POUND_FORCE,      about 0.2248 lbf",
    "1000 N,   KILONEWTON,       1 kN",
    "30.50 lbf, POUND_FORCE,     30.5 lbf",
  })
  void forces_are_shown_exactly_or_with_about(String force, ForceUnit unit, String shown) {
    assertThat(Force.parse(force).format(unit)).isEqualTo(shown);
  }

  @ParameterizedTest(name = "{0} in {1} is {2}")
  @CsvSource({
    "0.030 in,    MILLIMETRE, 0.762 mm",
    "0.76 mm,     INCH,       about 0.0299 in",
    "-0.76 mm,    INCH,       about -0.0299 in",
    "0.000127 mm, INCH,       0.000005 in",
    "0.00127 mm,  INCH,       0.00005 in",
    "1/64 in,     INCH,       0.015625 in",
    "100 mm,      MILLIMETRE, 100 mm",
    "0.0 mm,      INCH,       0 in",
  })
  void lengths_are_shown_exactly_or_with_about(String length, LengthUnit unit, String shown) {
    assertThat(Length.parse(length).format(unit)).isEqualTo(shown);
  }

  @ParameterizedTest(name = "{0} lbf.ft is {1} lbf.in or about {2} N.m")
  @CsvSource({"15, 180, 20.3373", "20, 240, 27.1164"})
  void torques_are_shown_exactly_or_with_about(String feet, String inches, String newtonMetres) {
    Torque torque = Torque.parse(feet + " lbf.ft");

    assertThat(torque.format(TorqueUnit.POUND_FORCE_INCH)).isEqualTo(inches + " lbf.in");
    assertThat(torque.format(TorqueUnit.NEWTON_METRE)).isEqualTo("about " + newtonMetres + " N.m");
  }

  @ParameterizedTest(name = "{0} newtons are shown as {1}")
  @CsvSource({
    "0.123456,  0.123456 N",
    "0.1234560, 0.123456 N",
    "0.1234567, about 0.1235 N",
    "0.1234499, about 0.1234 N",
    "0.0000001, about 0.0000 N",
    "1E+3,      1000 N",
  })
  void six_decimal_places_are_shown_exactly_and_more_are_rounded_to_four(
      BigDecimal newtons, String shown) {
    assertThat(new Force(newtons, ForceUnit.NEWTON)).hasToString(shown);
  }

  @ParameterizedTest(name = "{0} in {1} is {2}")
  @CsvSource({
    "1 psi,   KILOPASCAL, about 6.8948 kPa",
    "90 psi,  KILOPASCAL, about 620.5282 kPa",
    "100 psi, BAR,        about 6.8948 bar",
    "100 kPa, PSI,        about 14.5038 psi",
    "620 kPa, BAR,        6.2 bar",
  })
  void pressures_are_shown_exactly_or_with_about(String pressure, PressureUnit unit, String shown) {
    assertThat(Pressure.parse(pressure).format(unit)).isEqualTo(shown);
  }

  @Test
  void one_psi_lies_between_the_neighbouring_decimals_of_a_kilopascal() {
    assertThat(Pressure.parse("1 psi"))
        .isGreaterThan(Pressure.parse("6.894757 kPa"))
        .isLessThan(Pressure.parse("6.894758 kPa"));
  }

  @Test
  void a_pressure_in_mixed_units_is_added_and_taken_away_without_rounding() {
    Pressure psi = Pressure.parse("90 psi");
    Pressure kPa = Pressure.parse("1 kPa");

    assertThat(psi.plus(kPa).minus(kPa)).isEqualTo(psi).hasSameHashCodeAs(psi);
    assertThat(psi.plus(kPa).unit()).isEqualTo(PressureUnit.KILOPASCAL);
    assertThat(psi.plus(psi)).hasToString("180 psi");
  }

  @Test
  void half_a_turn_back_is_180_degrees() {
    assertThat(Angle.parse("1/2 turn").format(AngleUnit.DEGREE)).isEqualTo("180 deg");
    assertThat(Angle.parse("1 deg").format(AngleUnit.TURN)).isEqualTo("about 0.0028 turn");
  }
}
