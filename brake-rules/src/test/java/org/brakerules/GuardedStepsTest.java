package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.WorkPlanSteps.ids;
import static org.brakerules.WorkPlanSteps.plan;
import static org.brakerules.WorkPlanSteps.step;

import org.brakerules.model.layout.Fitted;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Sign;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;
import org.junit.jupiter.api.Test;

/** What keeps a vehicle from rolling and a spring from flying. */
class GuardedStepsTest {

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
    assertThat(step(plan(SoundBrake.tube()), "ARRIVE-090").hold()).isTrue();
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
}
