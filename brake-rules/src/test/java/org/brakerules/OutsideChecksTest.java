package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.part.LipDirection;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.SealKind;
import org.brakerules.model.part.Sign;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Verdicts held against something outside this project; each names its source and standing. */
class OutsideChecksTest {

  private static final String SHAFT = "camshaft";
  private static final String HEAD = "camshaft-bushing/head-end";
  private static final String SPLINE = "camshaft-bushing/spline-end";
  private static final String HEAD_SEAL = "camshaft-seal/head-end";
  private static final String SPLINE_SEAL = "camshaft-seal/spline-end";

  @Test
  @DisplayName("The sound wheel end is sound: nothing below fails for another reason")
  void a_sound_brake_goes_back() {
    for (String part : new String[] {SHAFT, HEAD, SPLINE, HEAD_SEAL, SPLINE_SEAL}) {
      assertThat(SoundBrake.tube().disposition(part)).as(part).isEqualTo(Disposition.REUSE);
    }
  }

  @ParameterizedTest(name = "{0} at the head, {1} at the adjuster end: {2}")
  @DisplayName("Radial play, TM 5-4210-220-12 paras 4-30.4 and 4-32.5, verified")
  @CsvSource({
    "0.020 in, 0.020 in, REUSE",
    "0.019 in, 0.020 in, REUSE",
    "0.021 in, 0.012 in, REPLACE",
    "0.012 in, 0.021 in, REPLACE",
    "0.508 mm, 0.508 mm, REUSE",
    "0.509 mm, 0.300 mm, REPLACE",
    "0.300 mm, 0.508001 mm, REPLACE",
  })
  void radial_play_over_0_020_in_at_either_station_replaces_both_bushings(
      String head, String spline, Disposition expected) {
    SoundBrake brake = play(SoundBrake.tube(), head, spline);
    assertThat(brake.disposition(HEAD)).isEqualTo(expected);
    assertThat(brake.disposition(SPLINE)).isEqualTo(expected);
  }

  @Test
  @DisplayName("Check case C06: bushings first; TM 5-4210-220-12 4-30.4 and 4-32.5, verified")
  void first_inspection_replaces_the_bushings_and_not_yet_the_camshaft() {
    SoundBrake first = play(SoundBrake.tube(), "0.012 in", "0.021 in");
    assertThat(first.disposition(HEAD)).isEqualTo(Disposition.REPLACE);
    assertThat(first.disposition(SPLINE)).isEqualTo(Disposition.REPLACE);
    assertThat(first.disposition(SHAFT)).isEqualTo(Disposition.REUSE);
    assertThat(first.decision(SPLINE).actions())
        .anyMatch(action -> action.contains("measure the play again"));
  }

  @Test
  @DisplayName("Check case C06: then the camshaft; TM 5-4210-220-12 4-30.4 and 4-32.5, verified")
  void second_inspection_with_new_bushings_replaces_the_camshaft_if_play_is_still_over() {
    SoundBrake second = play(newBushings(), "0.012 in", "0.021 in");
    assertThat(second.disposition(SHAFT)).isEqualTo(Disposition.REPLACE);
    assertThat(second.decision(SHAFT).reasons()).extracting(Reason::rule).contains("CAMSHAFT-110");
    assertThat(second.disposition(SPLINE)).isEqualTo(Disposition.UNDECIDED);
  }

  @Test
  @DisplayName("Second inspection at the limit; TM 5-4210-220-12 4-30.4 and 4-32.5, verified")
  void second_inspection_with_new_bushings_ends_if_play_is_at_the_limit() {
    SoundBrake second = play(newBushings(), "0.020 in", "0.020 in");
    assertThat(second.disposition(SHAFT)).isEqualTo(Disposition.REUSE);
    assertThat(second.disposition(HEAD)).isEqualTo(Disposition.REUSE);
    assertThat(second.disposition(SPLINE)).isEqualTo(Disposition.REUSE);
  }

  /** The maximum is common practice, no source. */
  @ParameterizedTest(name = "end play {0}: {1}")
  @DisplayName("End play, minimum 0.005 in: TM 5-4210-220-12 4-32.5 step 9, verified")
  @CsvSource({
    "0 in,       ADJUST, CAMSHAFT-020",
    "0.004 in,   ADJUST, CAMSHAFT-020",
    "0.005 in,   REUSE,  GENERAL-010",
    "0.006 in,   REUSE,  GENERAL-010",
    "0.029 in,   REUSE,  GENERAL-010",
    "0.030 in,   REUSE,  GENERAL-010",
    "0.031 in,   ADJUST, CAMSHAFT-010",
    "0.127 mm,   REUSE,  GENERAL-010",
    "0.126 mm,   ADJUST, CAMSHAFT-020",
    "0.762 mm,   REUSE,  GENERAL-010",
    "0.763 mm,   ADJUST, CAMSHAFT-010",
  })
  void end_play_outside_the_band_is_adjusted(String play, Disposition expected, String rule) {
    Decision shaft =
        SoundBrake.tube()
            .measured(SHAFT, "endPlay", play, Station.SPLINE_END, Method.DIAL_INDICATOR)
            .decision(SHAFT);
    assertThat(shaft.disposition()).isEqualTo(expected);
    assertThat(shaft.reasons()).extracting(Reason::rule).containsExactly(rule);
  }

  @ParameterizedTest(name = "{0}, {1}: hold {2}, road {3}")
  @DisplayName("Cam rotation, Quebec C-24.2 r. 32 s. 166(7): law, verified")
  @CsvSource({
    "quebec,     119 deg,        false, MET",
    "quebec,     120 deg,        false, MET",
    "quebec,     120.000001 deg, true,  FAILED",
    "quebec,     121 deg,        true,  FAILED",
    "us-federal, 119 deg,        false, SILENT",
    "us-federal, 121 deg,        false, SILENT",
    "us-federal, 350 deg,        false, SILENT",
  })
  void cam_rotation_is_limited_by_the_law_of_quebec_alone(
      String ruleSet, String angle, boolean hold, RoadAnswer road) {
    Decision shaft =
        SoundBrake.tube()
            .ruleSet(ruleSet)
            .measured(SHAFT, "rotation", angle, Station.WHOLE_PART, Method.PROTRACTOR)
            .decision(SHAFT);
    assertThat(shaft.hold()).isEqualTo(hold);
    assertThat(shaft.road()).isEqualTo(road);
  }

  @ParameterizedTest(name = "{0}: {1}, road {2}")
  @DisplayName("Cam rotation not measured, Quebec C-24.2 r. 32 s. 166(7): law, verified")
  @CsvSource({"quebec, UNDECIDED, OPEN", "us-federal, REUSE, SILENT"})
  void cam_rotation_must_be_known_where_the_law_limits_it(
      String ruleSet, Disposition expected, RoadAnswer road) {
    Decision shaft = SoundBrake.tube().ruleSet(ruleSet).decision(SHAFT);
    assertThat(shaft.disposition()).isEqualTo(expected);
    assertThat(shaft.road()).isEqualTo(road);
  }

  @ParameterizedTest(name = "{0}: road {1}")
  @DisplayName("A roller past the nose, Quebec C-24.2 r. 32 s. 166(7): law, verified")
  @CsvSource({"quebec, FAILED", "us-federal, SILENT"})
  void a_roller_past_the_nose_stops_work_everywhere_and_fails_the_law_of_quebec(
      String ruleSet, RoadAnswer road) {
    Decision shaft =
        SoundBrake.tube().ruleSet(ruleSet).with(SHAFT, "rollerPastNose", Sign.SEEN).decision(SHAFT);
    assertThat(shaft.hold()).isTrue();
    assertThat(shaft.disposition()).isEqualTo(Disposition.REPLACE);
    assertThat(shaft.road()).isEqualTo(road);
  }

  @ParameterizedTest(name = "{0}, {1}, lip {2}: {3}")
  @DisplayName("Every lip faces the adjuster, tube layout: common practice, no source")
  @CsvSource({
    "camshaft-seal/head-end,   ONE_LIP,           TOWARD_ADJUSTER, REUSE",
    "camshaft-seal/head-end,   ONE_LIP,           TOWARD_HEAD,     REPLACE",
    "camshaft-seal/head-end,   MAIN_AND_DUST_LIP, TOWARD_HEAD,     REPLACE",
    "camshaft-seal/head-end,   O_RING,            TOWARD_HEAD,     REUSE",
    "camshaft-seal/head-end,   ONE_LIP,           UNKNOWN,         UNDECIDED",
    "camshaft-seal/head-end,   O_RING,            UNKNOWN,         REUSE",
    "camshaft-seal/spline-end, ONE_LIP,           TOWARD_ADJUSTER, REUSE",
    "camshaft-seal/spline-end, ONE_LIP,           TOWARD_HEAD,     REPLACE",
    "camshaft-seal/spline-end, ONE_LIP,           UNKNOWN,         UNDECIDED",
  })
  void every_lip_faces_the_adjuster_on_the_tube_layout(
      String seal, SealKind kind, LipDirection lip, Disposition expected) {
    SoundBrake brake = SoundBrake.tube().with(seal, "kind", kind).with(seal, "lip", lip);
    assertThat(brake.disposition(seal)).isEqualTo(expected);
  }

  @Test
  @DisplayName("No direction is assumed where the layout is not stated: common practice, no source")
  void a_lip_is_not_judged_while_the_layout_is_unknown() {
    SoundBrake brake =
        SoundBrake.tube()
            .layout(CamshaftLayout.UNKNOWN)
            .with(HEAD_SEAL, "lip", LipDirection.TOWARD_HEAD);
    assertThat(brake.disposition(HEAD_SEAL)).isEqualTo(Disposition.UNDECIDED);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @DisplayName("Seals of a withdrawn camshaft are renewed: common practice, no source")
  @CsvSource({
    "CAMSHAFT_OUT, REPLACE",
    "SHOES_OFF, UNDECIDED",
    "DRUM_OFF, UNDECIDED",
    "WHEEL_ON, UNDECIDED"
  })
  void a_good_old_seal_is_renewed_whenever_the_shaft_was_withdrawn(
      Scope scope, Disposition expected) {
    for (String seal : new String[] {HEAD_SEAL, SPLINE_SEAL}) {
      SoundBrake brake =
          SoundBrake.tube().scope(scope).asFound(seal).with(seal, "worn", Sign.NOT_SEEN);
      assertThat(brake.disposition(seal)).as(seal).isEqualTo(expected);
    }
  }

  private static SoundBrake newBushings() {
    return SoundBrake.tube()
        .fittedNew(HEAD)
        .with(HEAD, "wrongDepth", Sign.NOT_SEEN)
        .fittedNew(SPLINE)
        .with(SPLINE, "wrongDepth", Sign.NOT_SEEN)
        .with(SHAFT, "wobblesInNewBushings", Sign.NOT_SEEN);
  }

  private static SoundBrake play(SoundBrake brake, String head, String spline) {
    Method lifted = Method.DIAL_INDICATOR_LIFTED_BY_HAND;
    return brake
        .measured(HEAD, "radialPlay", head, Station.HEAD_END, lifted)
        .measured(SPLINE, "radialPlay", spline, Station.SPLINE_END, lifted);
  }
}
