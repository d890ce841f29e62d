package org.brakerules.calc.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.brakerules.calc.Estimate;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.quantity.TorqueUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Estimates of force. */
class ForceTest {

  private static final BigDecimal TYPE_30 = new BigDecimal("30");

  /** A province's air brake handbook: a type 30 at 100 psi pushes with 3,000 lbf. */
  @Test
  void a_type_30_at_100_psi_pushes_with_3000_lbf() {
    assertThat(PushRodForce.of(Pressure.parse("100 psi"), TYPE_30).force().value())
        .isEqualTo(Force.parse("3000 lbf"));
  }

  /** From memory of the trade: area 16 on an arm of 5 in at 60 psi gives 4,800 lbf in. */
  @Test
  void area_times_length_times_pressure_is_the_torque() {
    BigDecimal area = new BigDecimal("16");
    Length arm = Length.inches("5");
    Estimate<Force> force = PushRodForce.of(Pressure.parse("60 psi"), area).force();
    assertThat(AreaTimesLength.of(area, arm).product()).isEqualByComparingTo("80");
    assertThat(torque(force, arm, "90 deg")).isEqualTo("4800 lbf.in");
  }

  /** From memory of the trade: the sine of 75 degrees is 0.966. */
  @Test
  void off_the_right_angle_the_torque_falls() {
    Estimate<Force> force = PushRodForce.of(Pressure.parse("60 psi"), new BigDecimal("16")).force();
    String torque = torque(force, Length.inches("5"), "75 deg");
    assertThat(torque).isEqualTo("4636 lbf.in");
    assertThat(torque(force, Length.inches("5"), "105 deg")).isEqualTo(torque);
  }

  @ParameterizedTest
  @CsvSource({"0 deg", "180 deg"})
  void a_rod_in_line_with_its_arm_turns_nothing(Angle angle) {
    Estimate<Force> force = PushRodForce.of(Pressure.parse("60 psi"), TYPE_30).force();
    assertThatThrownBy(() -> CamshaftTorque.of(force, Length.inches("5"), angle))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Check case C15: a published reconstruction worksheet; the inputs are our own. */
  @Test
  void the_worksheet_gives_the_wheel_force() {
    WheelForce.Sizes sizes =
        new WheelForce.Sizes(Length.inches("0.5"), Length.inches("8.25"), Length.inches("20"));
    Estimate<Torque> torque =
        CamshaftTorque.of(
                new Estimate<>(Force.parse("1800 lbf")),
                Length.inches("5.5"),
                Angle.parse("90 deg"))
            .torque();
    WheelForce wheel = WheelForce.of(torque, sizes, new BigDecimal("0.35"));
    Force expected = Force.parse("3430.35 lbf");
    assertThat(wheel.force().value().minus(expected).abs()).isLessThan(Force.parse("0.5 lbf"));
  }

  /** Check case C36: 49 CFR 570.59(a)(1) accepts 25 %; on which wheel it is based is our own. */
  @ParameterizedTest(name = "{0} and {1}: {2}")
  @CsvSource({
    "3000 lbf, 2250 lbf, 25 %",
    "3000 lbf, 2240 lbf, 25.3 %",
    "2240 lbf, 3000 lbf, 25.3 %",
    "3000 lbf, 3000 lbf, 0 %",
  })
  void the_brakes_of_an_axle_are_compared_on_the_stronger(Force left, Force right, Share share) {
    assertThat(AxleBalance.of(left, right).difference().value()).isEqualTo(share);
  }

  @Test
  void the_torques_of_an_axle_are_compared_the_same_way() {
    Torque left = Torque.parse("9900 lbf.in");
    Torque right = Torque.parse("9000 lbf.in");
    assertThat(AxleBalance.of(left, right).difference().value()).isEqualTo(Share.parse("9.1 %"));
  }

  @Test
  void no_force_at_all_is_no_balance() {
    Force none = Force.parse("0 lbf");
    assertThatThrownBy(() -> AxleBalance.of(none, none))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> PushRodForce.of(Pressure.parse("0 psi"), TYPE_30))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> PushRodForce.of(Pressure.parse("60 psi"), BigDecimal.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource({"0.5, 20, 0", "0, 20, 0.35", "0.5, 0, 0.35"})
  void without_friction_lift_or_wheel_there_is_no_wheel_force(
      String lift, String rolling, BigDecimal friction) {
    WheelForce.Sizes sizes =
        new WheelForce.Sizes(Length.inches(lift), Length.inches("8.25"), Length.inches(rolling));
    Estimate<Torque> torque = new Estimate<>(Torque.parse("9900 lbf.in"));
    assertThatThrownBy(() -> WheelForce.of(torque, sizes, friction))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void every_force_says_that_it_is_an_estimate() {
    assertThat(PushRodForce.of(Pressure.parse("100 psi"), TYPE_30).working().asText())
        .contains("push-rod force about 3000 lbf")
        .contains("estimate)");
  }

  private static String torque(Estimate<Force> force, Length arm, String angle) {
    Torque torque = CamshaftTorque.of(force, arm, Angle.parse(angle)).torque().value();
    return torque.format(TorqueUnit.POUND_FORCE_INCH);
  }
}
