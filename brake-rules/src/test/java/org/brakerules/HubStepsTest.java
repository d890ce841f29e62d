package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.WorkPlanSteps.ids;
import static org.brakerules.WorkPlanSteps.plan;
import static org.brakerules.WorkPlanSteps.step;

import org.brakerules.model.layout.DrumMount;
import org.brakerules.model.part.Sign;
import org.brakerules.work.WorkPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is done to a hub, its seal and its bearings, and when. */
class HubStepsTest {

  @Test
  void a_blocked_vent_is_cleaned_though_the_hub_waits_for_its_end_play() {
    WorkPlan plan =
        plan(inboard().notMeasured("hub", "endPlay").with("hub", "ventBlocked", Sign.SEEN));
    assertThat(step(plan, "PREPARE-020").details()).contains("hub: Clean the vent. (HUB-050)");
  }

  @ParameterizedTest
  @CsvSource({"INBOARD, ASSEMBLE-440", "OUTBOARD, ASSEMBLE-420", "UNKNOWN, ASSEMBLE-450"})
  void the_inner_cone_lies_in_its_cup_before_the_seal_closes_the_hub(DrumMount mount, String id) {
    WorkPlan plan =
        plan(
            SoundBrake.tube()
                .withHub()
                .withWheelSeal()
                .layout("drumMount", mount)
                .with("wheel-seal", "leaking", Sign.SEEN));
    assertThat(step(plan, id).text())
        .containsSubsequence(
            "Where it is grooved a sleeve goes on it",
            "inner cone into its cup",
            "press the new wheel seal in square behind it, its lip toward the lubricant",
            "outer bearing");
  }

  @Test
  void the_signal_of_the_sensor_is_read_while_the_wheel_still_turns_by_hand() {
    assertThat(ids(plan(inboard()))).containsSubsequence("SET-050", "SET-065", "SET-070");
  }

  @Test
  void what_is_decided_at_the_end_names_the_step_that_showed_it() {
    WorkPlan plan = plan(inboard().notMeasured("hub", "endPlay"));
    assertThat(step(plan, "PROVE-100").details())
        .contains(
            "decide hub: measure end play of the hub on its bearings, as shown at step "
                + step(plan, "ASSEMBLE-460").number());
  }

  private static SoundBrake inboard() {
    return SoundBrake.tube().withHub().layout("drumMount", DrumMount.INBOARD);
  }
}
