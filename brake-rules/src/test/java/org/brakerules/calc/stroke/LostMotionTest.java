package org.brakerules.calc.stroke;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.AngleUnit;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LostMotionTest {

  private static final CamGeometry LEVERS = CamGeometry.common(Length.inches("5.5"));

  /** From the brief's mechanics: 0.020 in at a spline of 1 1/2 in is about 0.15 in at the arm. */
  @Test
  void backlash_at_the_spline_is_seven_times_as_much_at_the_arm() {
    Length stroke = cost(Looseness.SPLINE, "0.020").stroke().value();
    assertThat(stroke.minus(Length.inches("0.15")).abs()).isLessThan(Length.inches("0.002"));
  }

  @Test
  void a_pin_costs_its_play() {
    assertThat(cost(Looseness.PIN_IN_CLEVIS, "0.031").stroke().value())
        .isEqualTo(Length.inches("0.031"));
    assertThat(cost(Looseness.PIN_IN_ARM, "0.031").stroke().value())
        .isEqualTo(Length.inches("0.031"));
  }

  /** From the brief's mechanics: lever of 11 at the roller, a tenth more at the spline end. */
  @Test
  void a_bushing_costs_little_by_estimate_and_at_the_head_much_by_bound() {
    StrokeCost spline = cost(Looseness.BUSHING_AT_SPLINE_END, "0.020");
    StrokeCost head = cost(Looseness.BUSHING_AT_HEAD_END, "0.020");
    assertThat(spline.stroke().value()).isEqualTo(Length.inches("0.022"));
    assertThat(head.stroke().value()).isEqualTo(Length.inches("0"));
    assertThat(head.bound().value()).isEqualTo(Length.inches("0.22"));
  }

  @Test
  void a_linked_adjuster_does_not_feel_the_play_of_its_small_pin() {
    assertThat(DeadBand.of(Length.inches("0.031")).stroke().value())
        .isEqualTo(Length.inches("0.031"));
    assertThat(DeadBand.of(Length.inches("0")).stroke().value()).isEqualTo(Length.inches("0"));
    assertThatThrownBy(() -> DeadBand.of(Length.inches("-0.001")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void the_total_is_the_sum_of_its_parts() {
    Random random = new Random(20261125);
    for (int i = 0; i < 1000; i++) {
      Map<Looseness, Length> plays = plays(random);
      LostMotion lost = LostMotion.of(LEVERS, plays, Optional.empty());
      long sum = lost.costs().stream().mapToLong(one -> one.stroke().value().nanometres()).sum();
      assertThat(lost.total().value().nanometres()).isEqualTo(sum);
      assertThat(lost.costs()).hasSameSizeAs(plays.entrySet());
    }
  }

  @Test
  void more_play_never_costs_less() {
    Random random = new Random(7);
    for (int i = 0; i < 1000; i++) {
      Map<Looseness, Length> plays = plays(random);
      Length before = LostMotion.of(LEVERS, plays, Optional.empty()).total().value();
      plays.replaceAll((where, play) -> play.plus(new Length(random.nextInt(100_000), unit())));
      Length after = LostMotion.of(LEVERS, plays, Optional.empty()).total().value();
      assertThat(after).isGreaterThanOrEqualTo(before);
    }
  }

  @Test
  void a_measured_movement_of_the_arm_counts_instead_of_spline_and_gear() {
    Map<Looseness, Length> plays =
        Map.of(
            Looseness.PIN_IN_CLEVIS, Length.inches("0.030"),
            Looseness.SPLINE, Length.inches("0.020"),
            Looseness.ADJUSTER_GEAR, Length.inches("0.050"));
    LostMotion lost = LostMotion.of(LEVERS, plays, Optional.of(Length.inches("0.250")));
    assertThat(lost.total().value()).isEqualTo(Length.inches("0.280"));
    Length estimated =
        cost(Looseness.SPLINE, "0.020").stroke().value().plus(Length.inches("0.050"));
    assertThat(lost.differenceAtArm()).hasValue(Length.inches("0.250").minus(estimated));
  }

  @Test
  void once_the_spline_is_cured_no_more_is_gone_than_it_was_estimated_to_give() {
    Map<Looseness, Length> plays =
        Map.of(
            Looseness.PIN_IN_CLEVIS, Length.inches("0.030"),
            Looseness.SPLINE, Length.inches("0.020"),
            Looseness.ADJUSTER_GEAR, Length.inches("0.050"));
    LostMotion lost = LostMotion.of(LEVERS, plays, Optional.of(Length.inches("0.250")));
    Length spline = cost(Looseness.SPLINE, "0.020").stroke().value();
    assertThat(lost.without(Set.of(Looseness.SPLINE)).value())
        .isEqualTo(Length.inches("0.280").minus(spline));
    assertThat(lost.without(Set.of(Looseness.SPLINE)).value()).isLessThan(lost.total().value());
    assertThat(lost.without(Set.of(Looseness.PIN_IN_CLEVIS)).value())
        .isEqualTo(Length.inches("0.250"));
  }

  @Test
  void the_costliest_is_found_by_estimate_and_never_by_bound() {
    Map<Looseness, Length> plays =
        Map.of(
            Looseness.PIN_IN_CLEVIS, Length.inches("0.030"),
            Looseness.BUSHING_AT_HEAD_END, Length.inches("0.040"));
    LostMotion lost = LostMotion.of(LEVERS, plays, Optional.empty());
    assertThat(lost.costliest().map(StrokeCost::looseness)).hasValue(Looseness.PIN_IN_CLEVIS);
  }

  @Test
  void what_was_not_measured_is_named_and_what_is_known_is_given() {
    LostMotion lost =
        LostMotion.of(
            LEVERS,
            Map.of(Looseness.PIN_IN_CLEVIS, Length.inches("0.030")),
            Optional.of(Length.inches("0.250")));
    assertThat(lost.working().missing())
        .containsExactly(
            "play of large clevis pin in the arm",
            "play of camshaft bushing, spline end",
            "play of camshaft bushing, head end");
    assertThat(lost.working().results())
        .extracting(one -> one.name())
        .contains("lost motion known so far");
  }

  /** From the brief's mechanics, derived: 1/2 in of lining and 0.060 in of drum are 128 degrees. */
  @Test
  void worn_linings_and_drum_turn_the_cam_more_than_a_third_of_a_turn() {
    CamRotation rotation =
        CamRotation.usedBy(
            Length.inches("0.5"), Length.inches("0.06"), Length.inches("0"), Length.inches("0.5"));
    assertThat(rotation.used().value()).isEqualTo(Angle.parse("128.3 deg"));
  }

  /** From the brief's mechanics: half an inch of lift radius gives 0.008727 in a degree. */
  @Test
  void the_lining_that_may_still_wear_follows_from_the_rotation_that_is_left() {
    Angle oneDegree = new Angle(1_000_000, AngleUnit.DEGREE);
    Length lining = CamRotation.liningLeft(oneDegree, Length.inches("0.5")).value();
    double inches = 2 * lining.nanometres() / 25_400_000.0;
    assertThat(inches).isCloseTo(0.008727, within(0.000001));
  }

  @Test
  void a_lever_without_length_is_refused() {
    Length some = Length.inches("0.5");
    Length none = Length.inches("0");
    assertThatThrownBy(() -> CamGeometry.common(none)).hasMessage("No length of a lever: 0 in");
    assertThatThrownBy(() -> new CamGeometry(some, none, some))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new CamGeometry(some, some, none))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_measured_movement_of_the_arm_takes_the_place_of_its_parts_everywhere() {
    Map<Looseness, Length> plays =
        Map.of(
            Looseness.PIN_IN_CLEVIS, Length.inches("0.030"),
            Looseness.SPLINE, Length.inches("0.020"),
            Looseness.BUSHING_AT_HEAD_END, Length.inches("0.010"));
    LostMotion estimated = LostMotion.of(LEVERS, plays, Optional.empty());
    LostMotion measured = LostMotion.of(LEVERS, plays, Optional.of(Length.inches("0.250")));
    Length spline = cost(Looseness.SPLINE, "0.020").stroke().value();
    assertThat(estimated.most().value()).isEqualTo(Length.inches("0.140").plus(spline));
    assertThat(measured.most().value()).isEqualTo(Length.inches("0.390"));
    assertThat(estimated.costliest().map(StrokeCost::looseness)).hasValue(Looseness.SPLINE);
    assertThat(measured.costliest().map(StrokeCost::looseness)).hasValue(Looseness.PIN_IN_CLEVIS);
    assertThat(results(measured))
        .contains(
            "measured less estimated at the arm",
            "at the very most",
            "most is bought back at large clevis pin in the clevis");
  }

  @Test
  void without_parts_at_the_arm_there_is_nothing_to_compare_and_nothing_to_buy_back() {
    LostMotion movement = LostMotion.of(LEVERS, Map.of(), Optional.of(Length.inches("0.250")));
    LostMotion atHead =
        LostMotion.of(
            LEVERS,
            Map.of(Looseness.BUSHING_AT_HEAD_END, Length.inches("0.010")),
            Optional.empty());
    assertThat(movement.differenceAtArm()).isEmpty();
    assertThat(results(movement)).containsExactly("lost motion known so far");
    assertThat(atHead.costliest()).isEmpty();
    assertThat(results(LostMotion.of(LEVERS, Map.of(), Optional.empty()))).isEmpty();
  }

  @Test
  void an_arm_that_moved_less_than_its_parts_is_measured_again() {
    Map<Looseness, Length> plays = Map.of(Looseness.ADJUSTER_GEAR, Length.inches("0.050"));
    String again = "arm, spline and gear measured again: the parts are more than the whole";
    assertThat(
            LostMotion.of(LEVERS, plays, Optional.of(Length.inches("0.049"))).working().missing())
        .contains(again);
    assertThat(
            LostMotion.of(LEVERS, plays, Optional.of(Length.inches("0.050"))).working().missing())
        .doesNotContain(again);
  }

  /** A province's handbook sees the end of the cam at 120 degrees; the wear is our own. */
  @ParameterizedTest
  @CsvSource({"0.463, false", "0.4636, true", "0.464, true"})
  void a_cam_near_its_end_is_told(String lining, boolean told) {
    CamRotation rotation =
        CamRotation.usedBy(
            Length.inches(lining), Length.inches("0.06"), Length.inches("0"), Length.inches("0.5"));
    assertThat(rotation.working().asText().contains("the cam is near its end")).isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource({
    "120 deg, that is",
    "120.1 deg, 'the cam is past its limit'",
  })
  void a_cam_past_its_limit_leaves_no_lining(String turned, String told) {
    assertThat(
            CamRotation.left(Angle.parse(turned), Angle.parse("120 deg"), Length.inches("0.5"))
                .asText())
        .contains(told);
  }

  private static StrokeCost cost(Looseness looseness, String play) {
    return LostMotion.of(LEVERS, Map.of(looseness, Length.inches(play)), Optional.empty())
        .costs()
        .get(0);
  }

  private static List<String> results(LostMotion lost) {
    return lost.working().results().stream().map(one -> one.name()).toList();
  }

  private static Map<Looseness, Length> plays(Random random) {
    Map<Looseness, Length> plays = new TreeMap<>();
    for (Looseness looseness : Looseness.values()) {
      if (random.nextBoolean()) {
        plays.put(looseness, new Length(random.nextInt(2_000_000), unit()));
      }
    }
    return plays;
  }

  private static LengthUnit unit() {
    return LengthUnit.INCH;
  }
}
