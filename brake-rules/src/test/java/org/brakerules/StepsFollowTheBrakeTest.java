package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.WorkPlanSteps.ids;
import static org.brakerules.WorkPlanSteps.plan;
import static org.brakerules.WorkPlanSteps.record;
import static org.brakerules.WorkPlanSteps.step;

import java.time.LocalDate;
import java.util.Optional;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.layout.ArmKind;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.DrumMount;
import org.brakerules.model.layout.Fitted;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Sign;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.brakerules.work.FittedPart.Use;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What has to come off goes on again, and nothing is asked of a brake that has it not. */
class StepsFollowTheBrakeTest {

  @Test
  void the_new_ring_goes_in_once_the_shims_are_chosen() {
    WorkPlan plan = plan(SoundBrake.tube());
    assertThat(ids(plan))
        .containsSubsequence(
            "ASSEMBLE-180", "ASSEMBLE-190", "ASSEMBLE-200", "ASSEMBLE-205", "ASSEMBLE-210");
    assertThat(step(plan, "ASSEMBLE-190").parts()).isEmpty();
    assertThat(step(plan, "ASSEMBLE-205").parts()).singleElement();
    assertThat(record(plan, "ASSEMBLE-205", "gap").limitsInWords())
        .startsWith("at most 0.062 in at the spline end");
    assertThat(record(plan, "ASSEMBLE-205", "end play").limits()).hasSize(2);
  }

  @Test
  void a_tube_that_is_replaced_takes_the_chamber_and_its_hose_off_and_on() {
    WorkPlan plan = plan(SoundBrake.tube().with("camshaft-bracket", "cracked", Sign.SEEN));
    assertThat(ids(plan))
        .containsSubsequence("SECURE-030", "TEARDOWN-220", "TEARDOWN-240")
        .containsSubsequence("ASSEMBLE-020", "ASSEMBLE-030", "ASSEMBLE-350", "ASSEMBLE-360");
    assertThat(record(plan, "ASSEMBLE-350", "torque of the chamber nuts").makersFigure()).isTrue();
    assertThat(step(plan, "ASSEMBLE-350").parts())
        .extracting(part -> part.use())
        .containsOnly(Use.GOES_BACK);
  }

  @Test
  void a_support_bracket_takes_the_chamber_along_only_where_it_carries_it() {
    WorkPlan plan =
        plan(
            SoundBrake.tube()
                .layout(CamshaftLayout.SPLIT)
                .with("camshaft-bracket", "cracked", Sign.SEEN));
    assertThat(ids(plan)).contains("TEARDOWN-245").doesNotContain("TEARDOWN-240", "TEARDOWN-220");
  }

  @Test
  void the_torque_of_a_new_bracket_is_asked_for_once() {
    WorkPlan plan = plan(SoundBrake.tube().with("camshaft-bracket", "cracked", Sign.SEEN));
    assertThat(
            plan.steps().stream()
                .flatMap(step -> step.records().stream())
                .filter(record -> record.what().equals("torque of the bracket bolts")))
        .hasSize(1);
  }

  @Test
  void an_inboard_hub_is_opened_oiled_and_closed_again() {
    assertThat(ids(plan(SoundBrake.tube().layout("drumMount", DrumMount.INBOARD))))
        .containsSubsequence("TEARDOWN-055", "TEARDOWN-070")
        .containsSubsequence("ASSEMBLE-412", "ASSEMBLE-440", "ASSEMBLE-460", "ASSEMBLE-465");
  }

  @Test
  void a_hub_that_stays_on_is_neither_opened_nor_filled() {
    assertThat(ids(plan(SoundBrake.tube())))
        .doesNotContain("TEARDOWN-055", "ASSEMBLE-412", "ASSEMBLE-460", "ASSEMBLE-465");
  }

  @Test
  void the_hub_behind_an_outboard_drum_has_its_bearings_set_as_well() {
    Reading<Length> loose =
        Reading.of(Length.parse("0.010 in"), Station.WHOLE_PART, Method.DIAL_INDICATOR)
            .taken(Moment.AFTER_WORK);
    WorkPlan plan = plan(SoundBrake.tube().withHub().measured("hub", "endPlay", loose));
    assertThat(ids(plan)).containsSubsequence("ASSEMBLE-460", "ASSEMBLE-465");
  }

  @ParameterizedTest
  @EnumSource(DrumMount.class)
  void whoever_sets_bearings_measures_the_end_play_of_the_hub(DrumMount mount) {
    WorkPlan plan = plan(SoundBrake.tube().layout("drumMount", mount));
    boolean open = mount != DrumMount.OUTBOARD;
    assertThat(ids(plan).contains("ASSEMBLE-460")).isEqualTo(open);
    assertThat(ids(plan).contains("ASSEMBLE-465")).isEqualTo(open);
  }

  @ParameterizedTest
  @CsvSource({
    "AUTOMATIC_CLUTCH, ANCHORED, true",
    "AUTOMATIC_CLUTCH, LINKED, false",
    "MANUAL, UNKNOWN, false"
  })
  void the_mark_of_a_control_arm_is_asked_for_where_there_is_one(
      AdjusterKind kind, ArmKind arm, boolean asked) {
    WorkPlan plan = plan(SoundBrake.tube().layout("adjuster", kind).layout("arm", arm));
    assertThat(ids(plan).contains("ARRIVE-075")).isEqualTo(asked);
    assertThat(ids(plan).contains("PROVE-045")).isEqualTo(asked);
    assertThat(plan.steps())
        .filteredOn(step -> step.text().contains("mark of the control arm"))
        .extracting(WorkStep::id)
        .isSubsetOf("ARRIVE-075", "PROVE-045");
  }

  @Test
  void the_adjuster_is_greased_through_its_own_fitting() {
    assertThat(step(plan(SoundBrake.tube()), "ASSEMBLE-235").greases()).hasSize(1);
  }

  @Test
  void the_shoes_that_go_on_are_measured_where_others_than_the_old_ones_may() {
    assertThat(ids(plan(SoundBrake.tube()))).doesNotContain("ASSEMBLE-315");
    WorkPlan reline = plan(SoundBrake.tube().with("lining/upper", "broken", Sign.SEEN));
    assertThat(record(reline, "ASSEMBLE-315", "span").limitsInWords())
        .startsWith("at least 12.3 in; at most 12.6 in");
  }

  @Test
  void a_part_that_was_inspected_new_does_not_go_back() {
    WorkStep seals = step(plan(SoundBrake.tube().fittedNew("cam-roller/upper")), "ASSEMBLE-330");
    assertThat(seals.parts())
        .filteredOn(part -> part.part().kind().id().equals("cam-roller"))
        .extracting(part -> part.use())
        .contains(Use.INSPECTED_NEW);
  }

  @Test
  void a_hub_whose_end_play_only_the_work_shows_is_not_asked_for_before_it_goes_on() {
    WorkPlan plan =
        plan(
            SoundBrake.tube()
                .withHub()
                .layout("drumMount", DrumMount.INBOARD)
                .notMeasured("hub", "endPlay"));
    assertThat(step(plan, "ASSEMBLE-440").parts())
        .filteredOn(part -> part.part().kind().id().equals("hub"))
        .extracting(part -> part.use())
        .containsExactly(Use.DECIDED_AFTERWARDS);
  }

  @Test
  void no_step_sends_a_bushing_out_of_a_bracket_that_is_thrown_away() {
    WorkPlan plan = plan(SoundBrake.tube().with("camshaft-bracket", "cracked", Sign.SEEN));
    assertThat(step(plan, "TEARDOWN-210").text()).contains("goes with it");
  }

  @Test
  void a_new_seal_stays_in_unless_it_is_replaced_all_the_same() {
    SoundBrake bothNew =
        SoundBrake.tube().fittedNew("camshaft-seal/head-end").fittedNew("camshaft-seal/spline-end");
    assertThat(ids(plan(bothNew))).doesNotContain("TEARDOWN-200", "TEARDOWN-205");
    assertThat(ids(plan(bothNew.with("camshaft-seal/head-end", "cut", Sign.SEEN))))
        .contains("TEARDOWN-205")
        .doesNotContain("TEARDOWN-200");
    assertThat(ids(plan(bothNew.asFound("camshaft-seal/head-end")))).contains("TEARDOWN-200");
  }

  @Test
  void the_play_of_a_clevis_pin_that_is_asked_for_is_read_with_no_spring_behind_it() {
    WorkPlan plan =
        plan(SoundBrake.tube().scope(Scope.WHEEL_ON).notMeasured("clevis", "pinMovement"));
    assertThat(ids(plan))
        .containsSubsequence("SECURE-020", "SECURE-030", "SECURE-040", "DECIDE-010");
  }

  @Test
  void a_fitting_is_tried_while_the_old_seals_are_still_in() {
    WorkPlan plan =
        plan(SoundBrake.tube().with("grease-fitting/tube", "blocked", Sign.NOT_CHECKED));
    assertThat(ids(plan)).containsSubsequence("TEARDOWN-115", "TEARDOWN-180");
  }

  @Test
  void a_new_chamber_brings_its_own_spring_brake_and_rod_and_the_old_unit_leaves_whole() {
    WorkPlan plan = plan(SoundBrake.tube().with("chamber", "leak", Sign.SEEN));
    assertThat(ids(plan))
        .containsSubsequence("TEARDOWN-220", "ASSEMBLE-342", "ASSEMBLE-344", "ASSEMBLE-350");
    assertThat(step(plan, "ASSEMBLE-342").hold()).isTrue();
    assertThat(step(plan, "ASSEMBLE-342").text())
        .contains("Never put the old spring brake on it", "disarmed");
    assertThat(step(plan, "ASSEMBLE-350").parts())
        .extracting(part -> part.part().kind().id() + " " + part.use())
        .containsExactlyInAnyOrder("chamber NEW", "push-rod WITH_UNIT", "spring-brake WITH_UNIT");
  }

  @Test
  void a_drive_wheel_is_turned_with_the_gearbox_in_neutral_and_no_other_axle_has_one() {
    assertThat(ids(plan(SoundBrake.tube().axleKind(AxleKind.DRIVE))))
        .containsSubsequence("SECURE-010", "SECURE-015", "SET-050");
    assertThat(ids(plan(SoundBrake.tube().axleKind(AxleKind.TRAILER))))
        .doesNotContain("SECURE-015");
  }

  @Test
  void a_new_drum_is_washed_and_turned_true_whether_it_is_ordered_or_lies_ready() {
    assertThat(ids(plan(SoundBrake.tube().fittedNew("drum"))))
        .contains("PREPARE-030", "ASSEMBLE-468");
    assertThat(ids(plan(SoundBrake.tube()))).doesNotContain("PREPARE-030", "ASSEMBLE-468");
  }

  @Test
  void an_adjuster_is_greased_whenever_the_shoes_are_off() {
    assertThat(ids(plan(SoundBrake.tube().scope(Scope.SHOES_OFF)))).contains("ASSEMBLE-235");
    assertThat(ids(plan(SoundBrake.tube().scope(Scope.DRUM_OFF)))).doesNotContain("ASSEMBLE-235");
  }

  @Test
  void a_new_chamber_takes_a_new_jam_nut() {
    assertThat(
            step(plan(SoundBrake.tube().with("chamber", "leak", Sign.SEEN)), "ASSEMBLE-370")
                .parts())
        .extracting(part -> part.part().kind().id() + " " + part.use())
        .containsExactly("jam-nut NEW");
  }

  @Test
  void a_chamber_without_spring_brake_brings_its_rod_alone() {
    WorkPlan plan =
        plan(SoundBrake.tube().layout("springBrake", Fitted.NO).with("chamber", "leak", Sign.SEEN));
    assertThat(ids(plan)).contains("ASSEMBLE-344").doesNotContain("ASSEMBLE-342");
  }

  @Test
  void a_chamber_that_goes_back_keeps_its_rod_and_is_of_the_size_the_maker_names() {
    WorkPlan plan = plan(SoundBrake.tube().with("camshaft-bracket", "cracked", Sign.SEEN));
    assertThat(ids(plan)).doesNotContain("ASSEMBLE-342", "ASSEMBLE-344");
    assertThat(step(plan, "ASSEMBLE-350").text())
        .contains("that the maker names, the same at both ends of the axle")
        .doesNotContain("of the one across the axle");
  }

  @Test
  void a_new_clevis_is_on_its_rod_and_set_before_the_arm_is_brought_to_it() {
    WorkPlan plan = plan(SoundBrake.tube().with("clevis", "threadWorn", Sign.SEEN));
    assertThat(ids(plan))
        .containsSubsequence("TEARDOWN-150", "TEARDOWN-155")
        .containsSubsequence("ASSEMBLE-362", "ASSEMBLE-365", "ASSEMBLE-370", "ASSEMBLE-380");
    assertThat(step(plan, "ASSEMBLE-362").parts())
        .extracting(part -> part.part().kind().id() + " " + part.use())
        .containsExactly("clevis NEW");
    assertThat(step(plan, "ASSEMBLE-370").text())
        .containsSubsequence("gauge on once more", "tighten the jam nut");
  }

  @Test
  void a_clevis_that_goes_back_stays_on_its_rod() {
    assertThat(ids(plan(SoundBrake.tube())))
        .doesNotContain("TEARDOWN-155")
        .contains("ASSEMBLE-362");
  }

  @Test
  void a_manual_adjuster_that_gives_way_to_an_automatic_one_is_set_as_such() {
    WorkPlan plan = plan(SoundBrake.tube().layout("adjuster", AdjusterKind.MANUAL));
    assertThat(step(plan, "ASSEMBLE-180").parts())
        .extracting(part -> part.use())
        .containsExactly(Use.NEW);
    assertThat(ids(plan))
        .containsSubsequence(
            "TEARDOWN-040", "TEARDOWN-155", "ASSEMBLE-175", "ASSEMBLE-180", "SET-062", "PROVE-010")
        .doesNotContain("SET-030", "SET-060");
    assertThat(step(plan, "SET-062").passesWhen())
        .contains("the wheel turns free")
        .doesNotContain("lock sleeve");
    assertThat(step(plan, "ASSEMBLE-175").passesWhen()).contains("the same at both ends");
  }

  @Test
  void a_manual_adjuster_that_is_worn_gives_way_to_another_manual_one() {
    WorkPlan plan =
        plan(
            SoundBrake.tube()
                .builtOn(Optional.of(LocalDate.of(1980, 1, 1)))
                .layout("adjuster", AdjusterKind.MANUAL)
                .with("slack-adjuster", "armBushingWorn", Sign.SEEN));
    assertThat(ids(plan)).contains("SET-030").doesNotContain("ASSEMBLE-175", "SET-062");
  }

  @Test
  void new_linings_are_run_in_though_they_were_fitted_before_the_inspection() {
    assertThat(ids(plan(SoundBrake.tube()))).doesNotContain("PROVE-120");
    assertThat(ids(plan(SoundBrake.tube().fittedNew("lining/upper"))))
        .containsSubsequence("PROVE-110", "PROVE-120", "PROVE-130");
  }

  @Test
  void a_bent_dust_shield_is_straightened_before_the_shoes_and_the_drum_runs_clear_of_it() {
    WorkPlan plan = plan(SoundBrake.tube().with("dust-shield", "bent", Sign.SEEN));
    assertThat(ids(plan))
        .containsSubsequence("ASSEMBLE-275", "ASSEMBLE-320", "ASSEMBLE-466", "ASSEMBLE-467")
        .containsSubsequence("ASSEMBLE-467", "ASSEMBLE-490");
    assertThat(step(plan, "ASSEMBLE-275").details())
        .singleElement()
        .asString()
        .contains("traighten");
    assertThat(step(plan, "ASSEMBLE-467").text()).contains("runs clear of the dust shield");
  }

  @Test
  void a_pin_that_is_out_is_decided_by_what_was_written_down_before() {
    WorkPlan plan =
        plan(SoundBrake.tube().scope(Scope.WHEEL_ON).notMeasured("clevis", "pinMovement"));
    assertThat(step(plan, "DECIDE-040").details())
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("decide clevis: measure ")
                    .contains("as written down at step " + step(plan, "SECURE-040").number()));
  }
}
