package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.WorkPlanSteps.ids;
import static org.brakerules.WorkPlanSteps.plan;
import static org.brakerules.WorkPlanSteps.record;
import static org.brakerules.WorkPlanSteps.step;

import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Sign;
import org.brakerules.work.Recording;
import org.brakerules.work.WorkPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A blank for a reading says all that makes it a reading of its limits. */
class LimitsAtStepsTest {

  @Test
  void the_movement_of_the_pin_meets_both_figures_the_finer_first_each_with_what_it_means() {
    assertThat(record(plan(SoundBrake.tube()), "SECURE-040", "movement of the pin").limitsInWords())
        .isEqualTo(
            "at most 0.020 in, else see which of pin and hole is worn; less than 1/16 in, else the"
                + " clevis goes; feeler gauge or dial indicator or caliper");
  }

  @Test
  void the_play_of_the_spline_is_read_at_its_pitch_radius_once_the_cam_can_be_held() {
    WorkPlan plan = plan(SoundBrake.tube());
    assertThat(record(plan, "TEARDOWN-165", "play at the spline").limitsInWords())
        .isEqualTo("at most 0.020 in at the spline pitch radius; dial indicator");
    assertThat(ids(plan)).containsSubsequence("TEARDOWN-120", "TEARDOWN-165", "TEARDOWN-170");
    assertThat(ids(plan(SoundBrake.tube().scope(Scope.DRUM_OFF))))
        .contains("SECURE-040")
        .doesNotContain("TEARDOWN-165");
  }

  @ParameterizedTest
  @CsvSource({
    "ARRIVE-060, applied stroke as found",
    "PROVE-030, applied stroke after work",
    "PROVE-130, applied stroke after the run"
  })
  void an_applied_stroke_says_at_which_pressure_it_counts(String step, String what) {
    WorkPlan plan = plan(SoundBrake.tube());
    assertThat(record(plan, step, what).limitsInWords())
        .endsWith("full application, at a reservoir pressure from 80 psi to 90 psi");
  }

  @Test
  void a_free_stroke_counts_at_any_pressure() {
    assertThat(record(plan(SoundBrake.tube()), "PROVE-130", "free stroke").limitsInWords())
        .doesNotContain("pressure");
  }

  @Test
  void the_two_limits_of_a_lining_are_told_apart_by_their_place() {
    assertThat(record(plan(SoundBrake.tube()), "TEARDOWN-100", "upper lining").limitsInWords())
        .isEqualTo(
            "at least 1/4 in at the shoe centre; at least 1/4 in at the thinnest point; caliper or"
                + " depth gauge or steel rule");
  }

  @ParameterizedTest
  @CsvSource({
    "TEARDOWN-100, upper lining, 6",
    "TEARDOWN-100, lower lining, 6",
    "INSPECT-020, bore, 12",
    "INSPECT-040, span, 2",
    "TEARDOWN-165, end play, 1"
  })
  void there_is_a_blank_for_each_reading(String step, String what, int readings) {
    assertThat(record(plan(SoundBrake.tube()), step, what).readings()).isEqualTo(readings);
  }

  @Test
  void a_torque_is_the_makers_figure_and_meets_no_limit() {
    assertThat(step(plan(SoundBrake.tube()), "ASSEMBLE-030").records())
        .extracting(Recording::limitsInWords)
        .containsOnly("");
  }

  @Test
  void the_run_out_of_a_new_drum_is_read_once_the_drum_is_on() {
    WorkPlan plan = plan(SoundBrake.tube().with("drum", "heatChecksJoined", Sign.SEEN));
    assertThat(ids(plan)).containsSubsequence("PREPARE-030", "ASSEMBLE-466", "ASSEMBLE-468");
    assertThat(step(plan, "PREPARE-030").records()).isEmpty();
    assertThat(record(plan, "ASSEMBLE-468", "run-out").limitsInWords()).startsWith("at most");
  }
}
