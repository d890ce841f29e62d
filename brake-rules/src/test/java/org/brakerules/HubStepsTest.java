package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.WorkPlanSteps.ids;
import static org.brakerules.WorkPlanSteps.plan;
import static org.brakerules.WorkPlanSteps.step;

import org.brakerules.model.assembly.AssemblyRecord;
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
    assertThat(ids(plan(inboard()))).containsSubsequence("SET-050", "SET-064", "SET-070");
  }

  @Test
  void what_is_decided_at_the_end_names_the_step_that_showed_it() {
    WorkPlan plan = plan(inboard().notMeasured("hub", "endPlay"));
    assertThat(step(plan, "PROVE-100").details())
        .contains(
            "decide hub: measure end play of the hub on its bearings, as shown at step "
                + step(plan, "ASSEMBLE-460").number());
  }

  @Test
  void what_only_a_hub_off_the_spindle_shows_is_not_asked_for_with_the_hub_on() {
    WorkPlan plan =
        plan(
            SoundBrake.tube()
                .withHub()
                .layout("drumMount", DrumMount.OUTBOARD)
                .with("hub", "looseAsFound", Sign.SEEN)
                .notMeasured("hub", "endPlay"));
    assertThat(ids(plan)).contains("TEARDOWN-105").doesNotContain("TEARDOWN-110", "INSPECT-030");
    assertThat(step(plan, "TEARDOWN-105").text()).contains("only once the hub is off");
  }

  @Test
  void a_hub_that_comes_off_is_looked_at_from_inside() {
    WorkPlan plan =
        plan(
            SoundBrake.tube()
                .withHub()
                .withWheelSeal()
                .layout("drumMount", DrumMount.OUTBOARD)
                .with("wheel-seal", "leaking", Sign.SEEN));
    assertThat(ids(plan)).containsSubsequence("TEARDOWN-110", "INSPECT-030", "ASSEMBLE-420");
  }

  private static SoundBrake inboard() {
    return SoundBrake.tube().withHub().layout("drumMount", DrumMount.INBOARD);
  }

  @Test
  void the_spindle_nuts_are_locked_before_the_end_play_is_read_and_the_hub_closed() {
    WorkPlan plan = plan(inboard());
    assertThat(step(plan, "ASSEMBLE-460").text())
        .containsSubsequence(
            "lock the spindle nuts with a new lock", "With the nuts locked measure");
    assertThat(step(plan, "ASSEMBLE-460").passesWhen()).startsWith("the lock is seated");
    assertThat(ids(plan)).containsSubsequence("ASSEMBLE-460", "ASSEMBLE-465");
  }

  @ParameterizedTest
  @CsvSource({
    "FINAL-090, lock that was disturbed",
    "FINAL-130, spindle nuts locked with a new lock"
  })
  void the_final_check_asks_for_the_lock_of_the_spindle_nuts(String check, String asked) {
    assertThat(
            BrakeRules.standard()
                .finalCheck(inboard().job(), AssemblyRecord.EMPTY)
                .places()
                .get(0)
                .checks())
        .filteredOn(one -> one.id().equals(check))
        .singleElement()
        .asString()
        .contains(asked);
  }

  @Test
  void a_new_lock_of_the_spindle_nuts_is_on_the_parts_list_of_a_hub_that_was_off() {
    SoundBrake leaking = inboard().withWheelSeal().with("wheel-seal", "leaking", Sign.SEEN);
    assertThat(BrakeRules.standard().parts(leaking.job()).wheelEnds().get(0).lines())
        .filteredOn(line -> line.item().id().equals("spindle-nut-lock"))
        .singleElement()
        .satisfies(line -> assertThat(line.amount().confirm()).isNotEmpty());
  }
}
