package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.WorkPlanSteps.ids;
import static org.brakerules.WorkPlanSteps.plan;
import static org.brakerules.WorkPlanSteps.record;
import static org.brakerules.WorkPlanSteps.step;

import java.time.LocalDate;
import java.util.Optional;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.part.Scope;
import org.brakerules.work.WorkPlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What holds the shaft and what moves it, when its play is read and its arm is brought home. */
class FreeShaftTest {

  @Test
  void play_is_read_with_the_pins_out_and_the_arm_still_on_the_shaft() {
    assertThat(ids(plan(SoundBrake.tube())))
        .containsSubsequence("TEARDOWN-120", "TEARDOWN-150", "TEARDOWN-165", "TEARDOWN-170");
  }

  @Test
  void where_the_pins_stay_in_the_reading_clears_nothing() {
    WorkPlan plan = plan(SoundBrake.tube().scope(Scope.SHOES_OFF));
    assertThat(ids(plan)).contains("TEARDOWN-165").doesNotContain("TEARDOWN-150");
    assertThat(step(plan, "TEARDOWN-165").text()).contains("it condemns, but it clears nothing");
  }

  @Test
  void the_tip_of_the_dial_has_its_place() {
    assertThat(step(plan(SoundBrake.tube()), "TEARDOWN-165").text())
        .contains("tip of the dial on the adjuster gear, as far from the middle of the shaft");
  }

  @Test
  void each_shoe_is_moved_away_from_the_cam() {
    assertThat(step(plan(SoundBrake.tube()), "TEARDOWN-120").text())
        .contains("Push the lower shoe down", "lift the upper shoe away from the cam");
  }

  @ParameterizedTest
  @CsvSource({"MANUAL", "AUTOMATIC_PAWL", "AUTOMATIC_CLUTCH", "UNKNOWN"})
  void the_arm_is_brought_to_the_clevis_by_its_hex_once_the_shoes_hold_the_cam(AdjusterKind kind) {
    WorkPlan plan = plan(SoundBrake.tube().layout("adjuster", kind));
    assertThat(ids(plan))
        .containsSubsequence("ASSEMBLE-180", "ASSEMBLE-340", "ASSEMBLE-365", "ASSEMBLE-370");
    assertThat(step(plan, "ASSEMBLE-365").text())
        .contains("by its hex with a hand wrench", "Never draw the rod out to the arm");
  }

  @Test
  void the_gap_at_the_ring_is_read_only_where_no_shim_takes_it_up() {
    WorkPlan plan = plan(SoundBrake.tube());
    assertThat(step(plan, "ASSEMBLE-205").text()).contains("Where no shim lies between them");
    assertThat(record(plan, "ASSEMBLE-205", "gap between outer washer and ring").what())
        .endsWith("with no shim there");
  }

  @ParameterizedTest
  @CsvSource({"MANUAL, SET-030", "AUTOMATIC_PAWL, SET-040", "AUTOMATIC_CLUTCH, SET-050"})
  void the_turn_of_the_cam_is_seen_on_the_way_to_the_drum(AdjusterKind kind, String step) {
    SoundBrake old = SoundBrake.tube().builtOn(Optional.of(LocalDate.of(1980, 1, 1)));
    String text = step(plan(old.layout("adjuster", kind)), step).text();
    assertThat(text.indexOf("see that the cam turns"))
        .isPositive()
        .isLessThan(text.indexOf("back it off"));
  }
}
