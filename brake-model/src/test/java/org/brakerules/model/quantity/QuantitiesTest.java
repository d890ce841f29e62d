package org.brakerules.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class QuantitiesTest {

  @Test
  void each_kind_is_read_by_its_type() {
    assertThat(Quantities.parse(Length.class, "0.030 in")).isEqualTo(Length.parse("0.030 in"));
    assertThat(Quantities.parse(Force.class, "30 lbf")).isEqualTo(Force.parse("30 lbf"));
    assertThat(Quantities.parse(Torque.class, "15 lbf.ft")).isEqualTo(Torque.parse("15 lbf.ft"));
    assertThat(Quantities.parse(Pressure.class, "90psi")).isEqualTo(Pressure.parse("90 psi"));
    assertThat(Quantities.parse(Angle.class, "1/4 turn")).isEqualTo(Angle.parse("90 deg"));
    assertThat(Quantities.parse(Share.class, "50%")).isEqualTo(new Share(new BigDecimal("50.0")));
  }

  @Test
  void a_text_alone_is_read_as_the_kind_of_its_unit() {
    assertThat(Quantities.parse("0.030 in")).isEqualTo(Length.parse("0.030 in"));
    assertThat(Quantities.parse("30 lbf")).isEqualTo(Force.parse("30 lbf"));
    assertThat(Quantities.parse("15 lbf.ft")).isEqualTo(Torque.parse("15 lbf.ft"));
    assertThat(Quantities.parse("90psi")).isEqualTo(Pressure.parse("90 psi"));
    assertThat(Quantities.parse("1/4 turn")).isEqualTo(Angle.parse("90 deg"));
    assertThat(Quantities.parse("50 %")).isEqualTo(Share.parse("50 %"));
  }

  @Test
  void a_text_alone_is_refused_as_the_kind_it_was_meant_to_be() {
    assertThatThrownBy(() -> Quantities.parse("15 ft-lbs"))
        .hasMessage(
            "\"15 ft-lbs\" is not a torque: the unit \"ft-lbs\" is not known. Write \"15"
                + " lbf.ft\".");
    assertThatThrownBy(() -> Quantities.parse("0,5 in"))
        .hasMessage("\"0,5 in\" is not a length: it has a decimal comma. Write \"0.5 in\".");
    assertThatThrownBy(() -> Quantities.parse("3 furlongs"))
        .isInstanceOf(QuantityFormatException.class)
        .hasMessageStartingWith(
            "\"3 furlongs\" is not a quantity: the unit \"furlongs\" is not known. Write a quantity"
                + " with the unit in, mm, lbf,");
  }

  @Test
  @SuppressWarnings({"unchecked", "rawtypes"})
  void quantity_itself_is_no_kind() {
    assertThatThrownBy(() -> Quantities.parse((Class) Quantity.class, "0.030 in"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "org.brakerules.model.quantity.Quantity is not one kind of quantity. Give one, such as"
                + " Length.class.");
  }

  @Test
  void the_symbols_are_these() {
    Stream<Unit<?>[]> all =
        Stream.of(
            LengthUnit.values(),
            ForceUnit.values(),
            TorqueUnit.values(),
            PressureUnit.values(),
            AngleUnit.values(),
            ShareUnit.values());

    assertThat(all.flatMap(Stream::of).map(Unit::symbol))
        .containsExactly(
            "in", "mm", "lbf", "N", "kN", "lbf.in", "lbf.ft", "N.m", "psi", "kPa", "bar", "deg",
            "turn", "%");
  }

  @Test
  void an_amount_with_a_stray_exponent_is_refused() {
    BigDecimal huge = new BigDecimal("1e999999999");
    BigDecimal tiny = new BigDecimal("1e-999999999");

    assertThatThrownBy(() -> new Force(huge, ForceUnit.NEWTON))
        .isInstanceOf(QuantityFormatException.class)
        .hasMessage(
            "\"1E+999999999\" is not a force: it is too large to be kept exactly. Write a smaller"
                + " force.");
    assertThatThrownBy(() -> new Share(tiny))
        .isInstanceOf(QuantityFormatException.class)
        .hasMessage(
            "\"1E-999999999\" is not a share: it is too fine to be kept exactly. Write at most 40"
                + " decimal places.");
  }

  @Test
  void forty_digits_before_and_after_the_point_are_kept_and_no_more() {
    BigDecimal large = new BigDecimal("1e39");
    BigDecimal fine = new BigDecimal("1e-40");

    assertThat(new Force(large, ForceUnit.NEWTON).format(ForceUnit.NEWTON))
        .isEqualTo("1" + "0".repeat(39) + " N");
    assertThat(new Share(fine)).isNotEqualTo(Share.parse("0 %"));
    assertThatThrownBy(() -> new Force(large.scaleByPowerOfTen(1), ForceUnit.NEWTON))
        .hasMessageContaining("it is too large to be kept exactly");
    assertThatThrownBy(() -> new Share(fine.scaleByPowerOfTen(-1)))
        .hasMessageContaining("it is too fine to be kept exactly");
  }

  @Test
  void an_angle_too_large_to_be_kept_is_refused_not_wrapped_around() {
    Angle largest = new Angle(Long.MAX_VALUE, AngleUnit.DEGREE);
    Angle smallest = new Angle(Long.MIN_VALUE, AngleUnit.DEGREE);
    Angle one = new Angle(1, AngleUnit.DEGREE);

    assertThatThrownBy(() -> largest.plus(one))
        .hasMessageStartingWith("\"9223372036854.775807 deg plus 0.000001 deg\" is not an angle");
    assertThatThrownBy(() -> smallest.minus(one))
        .hasMessageStartingWith("\"-9223372036854.775808 deg minus 0.000001 deg\" is not an angle");
    assertThatThrownBy(smallest::abs)
        .hasMessageStartingWith("\"-9223372036854.775808 deg without its sign\" is not an angle");
  }
}
