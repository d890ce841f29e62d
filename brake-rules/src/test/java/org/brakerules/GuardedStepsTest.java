package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.WorkPlanSteps.ids;
import static org.brakerules.WorkPlanSteps.plan;
import static org.brakerules.WorkPlanSteps.step;

import java.util.List;
import org.brakerules.finalcheck.CheckResult;
import org.brakerules.model.assembly.AssemblyRecord;
import org.brakerules.model.layout.Fitted;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.work.Recording;
import org.brakerules.work.Stop;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What keeps a vehicle from rolling and a spring from flying. */
class GuardedStepsTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);

  @Test
  void the_wheels_that_stay_down_are_none_that_the_plan_raises() {
    WorkStep chocks = step(plan(SoundBrake.tube()), "ARRIVE-020");
    assertThat(chocks.hold()).isTrue();
    assertThat(chocks.details()).containsExactly("this plan raises axle2");
    assertThat(chocks.passesWhen()).contains("one axle at a time");
    assertThat(chocks.records()).singleElement();
  }

  @Test
  void where_no_axle_is_raised_none_is_named() {
    WorkPlan plan =
        plan(SoundBrake.tube().scope(Scope.WHEEL_ON).with("hose", "bulging", Sign.SEEN));
    assertThat(ids(plan)).doesNotContain("SECURE-010");
    assertThat(step(plan, "ARRIVE-020").details()).isEmpty();
  }

  @Test
  void the_parking_brakes_are_set_and_the_chocks_seen_before_the_first_jack() {
    assertThat(ids(plan(SoundBrake.tube())))
        .containsSubsequence("ARRIVE-040", "ARRIVE-090", "SECURE-010");
    WorkStep set = step(plan(SoundBrake.tube()), "ARRIVE-090");
    assertThat(set.hold()).isTrue();
    assertThat(set.text()).contains("see that the parking brakes are set").doesNotContain("again");
  }

  @Test
  void an_axle_that_is_raised_only_to_set_its_adjuster_is_guarded_as_well() {
    WorkPlan plan =
        plan(
            SoundBrake.tube()
                .scope(Scope.WHEEL_ON)
                .with("slack-adjuster", "armBushingWorn", Sign.SEEN));
    assertThat(ids(plan)).containsSubsequence("ARRIVE-090", "SECURE-010");
  }

  @Test
  void air_holds_the_spring_before_its_bolt_is_turned() {
    assertThat(ids(plan(SoundBrake.tube()))).containsSubsequence("SET-010", "SET-015", "SET-020");
    assertThat(ids(plan(SoundBrake.tube().layout("springBrake", Fitted.NO))))
        .doesNotContain("SET-015");
  }

  @Test
  void the_parking_brakes_are_set_before_the_axle_is_lowered_and_released_for_the_strokes() {
    WorkPlan plan = plan(SoundBrake.tube());
    assertThat(ids(plan)).containsSubsequence("SET-050", "SET-065", "SET-070", "PROVE-010");
    assertThat(step(plan, "SET-065").hold()).isTrue();
    assertThat(step(plan, "PROVE-010").text()).contains("release the parking brakes");
  }

  @Test
  void the_chocks_are_away_before_the_vehicle_moves() {
    WorkPlan plan = plan(SoundBrake.tube());
    assertThat(ids(plan)).containsSubsequence("PROVE-070", "PROVE-105", "PROVE-110");
    assertThat(step(plan, "PROVE-105").text()).contains("take the chocks away");
  }

  @Test
  void what_the_parking_brakes_hold_is_tried_with_the_chocks_away() {
    WorkPlan plan = plan(SoundBrake.tube());
    assertThat(step(plan, "PROVE-110").text()).contains("drive off against them");
    assertThat(step(plan, "PROVE-110").passesWhen())
        .contains("the parking brakes hold the vehicle");
  }

  @Test
  void the_chocks_come_away_from_a_vehicle_that_was_only_looked_at() {
    WorkPlan plan =
        plan(SoundBrake.tube().scope(Scope.WHEEL_ON).with("hose", "bulging", Sign.SEEN));
    assertThat(ids(plan)).containsSubsequence("ARRIVE-020", "PROVE-105", "PROVE-150");
  }

  @Test
  void the_chocks_stay_where_the_plan_stops() {
    WorkPlan plan = plan(SoundBrake.tube().with("drum", "outsideCrack", Sign.SEEN));
    assertThat(ids(plan)).contains("ARRIVE-020").doesNotContain("PROVE-105");
  }

  @Test
  void only_wheel_and_drum_come_off_before_a_spring_that_air_holds_is_caged() {
    assertThat(step(plan(SoundBrake.tube()), "SECURE-020").text())
        .contains("take off wheel and drum with no change of air, and cage before any part behind");
  }

  @Test
  void a_hold_before_any_jack_keeps_the_whole_axle_on_its_wheels() {
    WorkPlan plan = plan(SoundBrake.tube().withPartner().with("spring-brake", "dent", Sign.SEEN));
    assertThat(ids(plan)).containsExactly("ARRIVE-010", "ARRIVE-020", "ARRIVE-030", "ARRIVE-030");
    assertThat(plan.stops()).extracting(Stop::wheelEnd).containsExactly(LEFT, LEFT.partner());
    assertThat(plan.stops().get(1).why())
        .singleElement()
        .asString()
        .startsWith("axle2/left, across the axle, is on hold before any jack");
    assertThat(plan.stops().get(1).wayOut())
        .containsExactly("axle2/left is put right first; then ask again");
    assertThat(plan.forWheelEnd(LEFT))
        .extracting(WorkStep::id)
        .containsExactly("ARRIVE-010", "ARRIVE-020", "ARRIVE-030");
  }

  @Test
  void a_hold_across_the_axle_is_told_beside_one_before_any_jack() {
    WorkPlan plan =
        plan(
            SoundBrake.tube()
                .withPartner()
                .with("drum", "outsideCrack", Sign.SEEN)
                .with("right/spring-brake", "dent", Sign.SEEN));
    assertThat(ids(plan)).doesNotContain("SECURE-010", "DECIDE-020");
    assertThat(plan.stops().get(0).why()).hasSize(2);
    assertThat(plan.stops().get(0).wayOut())
        .hasSizeGreaterThan(1)
        .startsWith("axle2/right is put right first; then ask again");
  }

  @Test
  void a_wheel_end_that_stops_has_no_step_of_vehicle_or_axle_beyond_its_stop() {
    WorkPlan plan = plan(SoundBrake.tube().withPartner().with("drum", "outsideCrack", Sign.SEEN));
    assertThat(ids(plan)).contains("DECIDE-060");
    assertThat(plan.forWheelEnd(LEFT)).last().extracting(WorkStep::id).isEqualTo("DECIDE-020");
    assertThat(plan.forWheelEnd(LEFT.partner())).extracting(WorkStep::id).contains("DECIDE-060");
  }

  @Test
  void both_air_lines_are_marked_before_they_come_off_and_go_back_on_their_own_ports() {
    WorkPlan plan = plan(SoundBrake.tube().with("camshaft-bracket", "cracked", Sign.SEEN));
    assertThat(ids(plan))
        .containsSubsequence("TEARDOWN-215", "TEARDOWN-220", "ASSEMBLE-360", "SET-015", "SET-020");
    assertThat(step(plan, "TEARDOWN-215").hold()).isTrue();
    assertThat(step(plan, "ASSEMBLE-360").passesWhen()).contains("on its own port");
    assertThat(step(plan, "SET-015").passesWhen()).contains("no rod moves out");
  }

  @Test
  void a_hose_that_is_replaced_says_which_line_it_is() {
    WorkPlan plan =
        plan(SoundBrake.tube().scope(Scope.WHEEL_ON).with("hose", "bulging", Sign.SEEN));
    assertThat(ids(plan)).containsSubsequence("TEARDOWN-215", "TEARDOWN-230", "ASSEMBLE-360");
    assertThat(step(plan, "TEARDOWN-230").records())
        .first()
        .extracting(Recording::what)
        .isEqualTo("service or spring line");
  }

  @Test
  void one_air_line_needs_no_mark() {
    assertThat(
            ids(
                plan(
                    SoundBrake.tube()
                        .layout("springBrake", Fitted.NO)
                        .with("hose", "bulging", Sign.SEEN))))
        .contains("TEARDOWN-230")
        .doesNotContain("TEARDOWN-215");
  }

  @Test
  void the_wheel_nuts_have_their_torque_before_a_brake_is_applied() {
    WorkPlan plan = plan(SoundBrake.tube());
    assertThat(ids(plan)).containsSubsequence("SET-065", "SET-070", "SET-080", "PROVE-010");
    assertThat(step(plan, "SET-080").text()).startsWith("With the parking brakes set tighten");
  }

  @ParameterizedTest
  @CsvSource({
    "chamber, leak, FINAL-310, the spring brake it came with",
    "hose, bulging, FINAL-320, its own port"
  })
  void what_holds_a_spring_back_is_asked_for_at_the_end(
      String part, String sign, String check, String asked) {
    SoundBrake brake = SoundBrake.tube();
    assertThat(checks(brake)).extracting(CheckResult::id).doesNotContain(check);
    assertThat(checks(brake.with(part, sign, Sign.SEEN)))
        .filteredOn(one -> one.id().equals(check))
        .singleElement()
        .extracting(CheckResult::question)
        .asString()
        .contains(asked);
  }

  private static List<CheckResult> checks(SoundBrake brake) {
    return BrakeRules.standard()
        .finalCheck(brake.job(), AssemblyRecord.EMPTY)
        .places()
        .get(0)
        .checks();
  }
}
