package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.BrakeJobBuilder;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.DrumMount;
import org.brakerules.model.layout.Fitted;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.LipDirection;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.parts.Handling;
import org.brakerules.work.FittedPart;
import org.brakerules.work.FittedPart.Use;
import org.brakerules.work.Recording;
import org.brakerules.work.Stop;
import org.brakerules.work.ToState;
import org.brakerules.work.WorkPhase;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;

/** The order of work of a brake that is sound but for what a test says. */
class WorkPlanTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);

  @Test
  void a_camshaft_job_goes_from_the_chocks_to_the_record() {
    WorkPlan plan = plan(SoundBrake.tube());
    assertThat(plan.stops()).isEmpty();
    assertThat(plan.toState()).isEmpty();
    assertThat(plan(SoundBrake.tube().withPartner()).isWholeWork()).isTrue();
    assertThat(ids(plan))
        .startsWith("ARRIVE-010", "ARRIVE-020")
        .containsSubsequence(
            "ARRIVE-050", "ARRIVE-060", "SECURE-010", "SECURE-020", "SECURE-030", "TEARDOWN-060")
        .containsSubsequence("TEARDOWN-090", "TEARDOWN-100", "TEARDOWN-120", "TEARDOWN-180")
        .containsSubsequence("INSPECT-010", "INSPECT-080", "DECIDE-010", "ASSEMBLE-030")
        .containsSubsequence(
            "ASSEMBLE-090", "ASSEMBLE-180", "ASSEMBLE-200", "ASSEMBLE-220", "ASSEMBLE-240")
        .containsSubsequence("ASSEMBLE-240", "ASSEMBLE-320", "ASSEMBLE-330", "ASSEMBLE-340")
        .containsSubsequence("SET-010", "SET-020", "SET-070", "PROVE-010", "PROVE-030")
        .endsWith("PROVE-150");
  }

  @Test
  void new_parts_that_are_used_once_are_new_again_where_the_shaft_comes_out_once_more() {
    SoundBrake finished = SoundBrake.tube().fittedNew("cotter-pin/large");
    SoundBrake reversed = finished.with("camshaft-seal/head-end", "lip", LipDirection.TOWARD_HEAD);
    assertThat(uses(plan(finished), "cotter-pin/large")).containsOnly(Use.INSPECTED_NEW);
    assertThat(uses(plan(reversed), "cotter-pin/large")).containsOnly(Use.NEW_ONCE_MORE);
    assertThat(BrakeRules.standard().parts(reversed.job()).wheelEnds().get(0).lines())
        .filteredOn(line -> line.item().id().equals("cotter-pin-large"))
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.handling()).isEqualTo(Handling.ORDER);
              assertThat(line.amount().inWords()).isEqualTo("count and confirm");
            });
  }

  private static List<Use> uses(WorkPlan plan, String part) {
    return plan.steps().stream()
        .flatMap(step -> step.parts().stream())
        .filter(fitted -> fitted.part().toString().equals(LEFT + "/" + part))
        .map(FittedPart::use)
        .toList();
  }

  @Test
  void springs_taken_off_at_one_end_are_new_at_the_end_that_is_not_in_the_job() {
    WorkPlan plan = plan(SoundBrake.tube());
    assertThat(plan.otherEnds())
        .singleElement()
        .satisfies(
            end -> {
              assertThat(end.wheelEnd()).isEqualTo(LEFT.partner());
              assertThat(end.renewed()).contains(PartKind.RETURN_SPRING);
            });
    assertThat(plan.isWholeWork()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "TUBE, ASSEMBLE-090, ASSEMBLE-240",
    "SPLIT, ASSEMBLE-100, ASSEMBLE-250",
    "CLOSED, ASSEMBLE-110, ASSEMBLE-260",
    "UNKNOWN, ASSEMBLE-120, ASSEMBLE-270"
  })
  void each_camshaft_layout_has_its_own_way_for_seals_and_purge(
      CamshaftLayout layout, String seals, String purge) {
    assertThat(ids(plan(SoundBrake.tube().layout(layout))))
        .contains(seals, purge)
        .filteredOn(id -> id.matches("ASSEMBLE-(090|1[012]0|2[4567]0)"))
        .hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({"LEFT, ASSEMBLE-130", "RIGHT, ASSEMBLE-140", "UNKNOWN, ASSEMBLE-150"})
  void the_hand_of_the_camshaft_is_checked_before_it_goes_in(Hand hand, String step) {
    assertThat(
            ids(
                plan(
                    SoundBrake.tube().layout("camshaftHand", hand).with("camshaft", "hand", hand))))
        .filteredOn(id -> id.matches("ASSEMBLE-1[345]0"))
        .containsExactly(step);
  }

  @ParameterizedTest
  @CsvSource({
    "MANUAL, TEARDOWN-040, SET-030",
    "AUTOMATIC_PAWL, TEARDOWN-020, SET-040",
    "AUTOMATIC_CLUTCH, TEARDOWN-030, SET-050",
    "UNKNOWN, TEARDOWN-050, SET-060"
  })
  void each_adjuster_is_backed_off_and_set_the_way_of_its_kind(
      AdjusterKind kind, String backOff, String set) {
    List<String> ids =
        ids(
            plan(
                SoundBrake.tube()
                    .builtOn(Optional.of(LocalDate.of(1980, 1, 1)))
                    .layout("adjuster", kind)));
    assertThat(ids).filteredOn(id -> id.matches("TEARDOWN-0[2345]0")).containsExactly(backOff);
    assertThat(ids).filteredOn(id -> id.matches("SET-0[3456]0")).containsExactly(set);
  }

  @Test
  void what_the_layout_does_not_say_is_asked_for_and_its_steps_are_conditional() {
    WorkPlan plan = plan(SoundBrake.tube().layout("sensor", Fitted.UNKNOWN));
    WorkStep sensor = step(plan, "ASSEMBLE-470");
    assertThat(sensor.ifFitted()).contains("if fitted: the layout does not say (layout.sensor)");
    assertThat(plan.isWholeWork()).isFalse();
    assertThat(plan.toState())
        .containsExactly(
            new ToState(
                LEFT,
                "layout.sensor",
                List.of(
                    sensor.number(),
                    step(plan, "SET-064").number(),
                    step(plan, "PROVE-090").number())));
  }

  @Test
  void a_brake_without_spring_brake_is_neither_caged_nor_uncaged() {
    WorkPlan plan = plan(SoundBrake.tube().layout("springBrake", Fitted.NO));
    assertThat(ids(plan)).doesNotContain("ARRIVE-030", "SECURE-020", "SET-020", "PROVE-070");
  }

  @Test
  void an_inboard_drum_comes_off_with_its_hub() {
    WorkPlan plan = plan(SoundBrake.tube().layout("drumMount", DrumMount.INBOARD));
    assertThat(ids(plan))
        .contains("TEARDOWN-070", "INSPECT-030", "ASSEMBLE-440", "ASSEMBLE-460")
        .doesNotContain("TEARDOWN-060", "ASSEMBLE-466");
  }

  @Test
  void a_replaced_part_goes_in_new_and_the_others_go_back() {
    WorkPlan plan = plan(SoundBrake.tube().with("cam-roller/upper", "flat", Sign.SEEN));
    assertThat(step(plan, "ASSEMBLE-330").parts())
        .extracting(part -> part.part().kind().id() + " " + part.use())
        .contains("cam-roller NEW");
    assertThat(step(plan, "ASSEMBLE-330").because())
        .anySatisfy(
            because -> {
              assertThat(because.words()).isEqualTo("is replaced");
              assertThat(because.rules()).contains("CAM-ROLLER-010");
            });
    assertThat(step(plan, "ASSEMBLE-320").parts())
        .extracting(FittedPart::use)
        .contains(Use.GOES_BACK);
  }

  @Test
  void a_sound_shoe_whose_lining_is_replaced_goes_back_relined() {
    WorkPlan plan = plan(SoundBrake.tube().with("lining/upper", "broken", Sign.SEEN));
    assertThat(step(plan, "ASSEMBLE-320").parts())
        .filteredOn(part -> part.part().kind() == PartKind.SHOE)
        .extracting(FittedPart::use)
        .containsExactly(Use.RELINED, Use.RELINED);
  }

  @Test
  void a_repair_is_told_where_it_is_made_and_nowhere_else() {
    WorkPlan plan = plan(SoundBrake.tube().with("dust-shield", "bent", Sign.SEEN));
    assertThat(plan.steps())
        .filteredOn(step -> String.join(" ", step.details()).contains("Straighten"))
        .extracting(WorkStep::phase)
        .isNotEmpty()
        .allMatch(phase -> phase == WorkPhase.PREPARE || phase == WorkPhase.ASSEMBLE);
  }

  @Test
  void a_damaged_spring_housing_stops_the_plan_before_the_air() {
    WorkPlan plan = plan(SoundBrake.tube().with("spring-brake", "dent", Sign.SEEN));
    assertThat(ids(plan)).containsExactly("ARRIVE-010", "ARRIVE-020", "ARRIVE-030");
    assertThat(plan.stops())
        .containsExactly(
            new Stop(
                LEFT,
                3,
                List.of(
                    "spring brake: The housing of the spring brake is dented or rusted through. It"
                        + " holds back the whole force of the spring and can let go. Neither cage"
                        + " nor uncage it, and keep clear of it. Have the whole unit replaced by"
                        + " someone equipped for it. (SPRING-BRAKE-010)"),
                List.of(
                    "Leave the axle on its wheels, keep everybody clear of the unit, and begin"
                        + " nothing else on this axle. First the whole unit is replaced by someone"
                        + " equipped for it.",
                    "put right what the hold names and what led to it, state the brake as it is"
                        + " then, the new parts as new, and ask again")));
    assertThat(plan.isWholeWork()).isFalse();
  }

  @Test
  void a_release_bolt_that_will_not_seat_stops_the_plan_at_the_caging() {
    WorkPlan plan = plan(SoundBrake.tube().with("spring-brake", "boltWillNotSeat", Sign.SEEN));
    assertThat(ids(plan)).endsWith("SECURE-020").doesNotContain("SECURE-030", "TEARDOWN-010");
  }

  @ParameterizedTest
  @EnumSource(mode = Mode.EXCLUDE, names = "WHEEL_ON")
  void any_other_hold_stops_it_when_the_parts_are_decided(Scope scope) {
    WorkPlan plan = plan(SoundBrake.tube().scope(scope).with("drum", "outsideCrack", Sign.SEEN));
    assertThat(ids(plan)).endsWith("DECIDE-020");
    assertThat(plan.steps()).noneMatch(step -> step.air() == WorkStep.Air.UP);
  }

  @Test
  void a_hold_on_one_end_lets_the_other_be_closed_but_brings_no_air_to_either() {
    SoundBrake both = SoundBrake.tube().withPartner().with("drum", "outsideCrack", Sign.SEEN);
    WorkPlan plan = plan(both);
    assertThat(plan.stops()).extracting(Stop::wheelEnd).containsExactly(LEFT);
    assertThat(own(plan, LEFT)).endsWith("DECIDE-020");
    assertThat(own(plan, LEFT.partner())).contains("SECURE-020", "ASSEMBLE-090", "ASSEMBLE-340");
    assertThat(plan.steps())
        .noneMatch(step -> step.air() == WorkStep.Air.UP)
        .noneMatch(step -> step.phase().compareTo(WorkPhase.SET) >= 0);
  }

  @Test
  void work_that_goes_further_than_the_inspection_stops_until_that_is_stated() {
    SoundBrake thin =
        SoundBrake.tube().scope(Scope.DRUM_OFF).with("lining/upper", "broken", Sign.SEEN);
    WorkPlan plan = plan(thin);
    assertThat(ids(plan)).contains("TEARDOWN-120").endsWith("DECIDE-030");
    assertThat(plan.stops().get(0).why())
        .containsExactly(
            "the inspection went as far as drum off, and the work goes as far as shoes off for"
                + " cam roller, upper (CAM-ROLLER-110)");
  }

  @Test
  void single_use_parts_that_the_work_disturbs_are_stated_as_disturbed_first() {
    SoundBrake turned =
        SoundBrake.tube().scope(Scope.WHEEL_ON).with("slack-adjuster", "facingWrongWay", Sign.SEEN);
    assertThat(plan(turned).stops().get(0).why())
        .contains(
            "TEARDOWN-150 disturbs the cotter pin, large, which the inspection left alone; state it"
                + " as disturbed");
  }

  @Test
  void an_adjuster_is_replaced_with_the_wheel_on() {
    WorkPlan plan =
        plan(
            SoundBrake.tube()
                .scope(Scope.WHEEL_ON)
                .with("slack-adjuster", "armBushingWorn", Sign.SEEN));
    assertThat(ids(plan))
        .containsSubsequence("SECURE-020", "SECURE-030", "TEARDOWN-150", "TEARDOWN-170")
        .containsSubsequence("ASSEMBLE-180", "ASSEMBLE-190", "ASSEMBLE-370", "ASSEMBLE-380")
        .containsSubsequence("SET-010", "SET-020", "SET-050", "PROVE-030")
        .doesNotContain("TEARDOWN-010", "TEARDOWN-120");
    assertThat(step(plan, "ASSEMBLE-380").parts())
        .filteredOn(part -> part.part().kind() == PartKind.COTTER_PIN)
        .extracting(FittedPart::use)
        .containsOnly(Use.NEW);
  }

  @Test
  void an_undecided_part_is_decided_before_it_is_put_in() {
    WorkPlan plan = plan(SoundBrake.tube().with("shoe/upper", "webCracked", Sign.NOT_CHECKED));
    WorkStep decide = step(plan, "DECIDE-040");
    assertThat(decide.undecided()).extracting(Place::toString).contains("axle2/left/shoe/upper");
    assertThat(decide.details())
        .anySatisfy(line -> assertThat(line).startsWith("decide shoe, upper: look for "));
    assertThat(step(plan, "ASSEMBLE-320").after()).contains(decide.number());
    assertThat(plan.isWholeWork()).isFalse();
  }

  @Test
  void limits_in_force_stand_where_they_are_met_and_torques_stay_blank() {
    WorkPlan plan = plan(SoundBrake.tube());
    Recording stroke = step(plan, "PROVE-030").records().get(0);
    assertThat(stroke.limits())
        .extracting(limit -> limit.limit().id())
        .contains("chamber.applied-stroke.max");
    assertThat(step(plan, "ASSEMBLE-030").records())
        .allSatisfy(
            torque -> {
              assertThat(torque.limits()).isEmpty();
              assertThat(torque.makersFigure()).isTrue();
            });
  }

  @Test
  void a_job_with_nothing_to_do_ends_with_its_record() {
    BrakeJob sound = SoundBrake.tube().job();
    WheelEnd end = sound.wheelEnds().findFirst().orElseThrow();
    BrakeJobBuilder wheelOn =
        BrakeJob.builder().date(sound.date()).ruleSet("us-federal").scope(Scope.WHEEL_ON);
    sound.makersLimits().forEach(wheelOn::makersLimit);
    wheelOn.wheelEnd(
        new WheelEnd(
            end.path(),
            end.layout(),
            end.parts().stream()
                .filter(part -> part.partKind().laidOpenFrom() == Scope.WHEEL_ON)
                .toList()));
    assertThat(ids(BrakeRules.standard().plan(wheelOn.build())))
        .contains("ARRIVE-060", "DECIDE-010")
        .endsWith("PROVE-150")
        .noneMatch(id -> id.matches("(SECURE|TEARDOWN|ASSEMBLE|SET)-.*"));
  }

  @Test
  void the_view_of_a_wheel_end_has_its_own_steps_and_the_shared_ones() {
    WorkPlan plan = plan(SoundBrake.tube().withPartner());
    assertThat(plan.forWheelEnd(LEFT))
        .extracting(WorkStep::on)
        .contains("", "axle2", "axle2/left")
        .doesNotContain("axle2/right");
  }

  private static WorkPlan plan(SoundBrake brake) {
    BrakeJob job = brake.job();
    return BrakeRules.standard().plan(job);
  }

  private static List<String> ids(WorkPlan plan) {
    return plan.steps().stream().map(WorkStep::id).toList();
  }

  private static Stream<String> own(WorkPlan plan, WheelEndPath end) {
    return plan.steps().stream().filter(step -> step.on().equals(end.toString())).map(WorkStep::id);
  }

  private static WorkStep step(WorkPlan plan, String id) {
    return plan.steps().stream().filter(step -> step.id().equals(id)).findFirst().orElseThrow();
  }
}
