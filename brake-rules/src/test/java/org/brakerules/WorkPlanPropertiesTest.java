package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.part.Place;
import org.brakerules.random.Answer;
import org.brakerules.random.Seeds;
import org.brakerules.work.FittedPart;
import org.brakerules.work.FittedPart.Use;
import org.brakerules.work.Stop;
import org.brakerules.work.Surface;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;
import org.junit.jupiter.api.Test;

/** What holds of the order of work of any job. */
class WorkPlanPropertiesTest {

  private static final int JOBS = 400;

  /** How a part goes in that is new for the sake of another; undecided ones are decided first. */
  private static final Set<Use> BESIDE_ANOTHER =
      EnumSet.of(
          Use.NEW,
          Use.WITH_UNIT,
          Use.NEW_ONCE_MORE,
          Use.RELINED,
          Use.UNDECIDED,
          Use.DECIDED_AFTERWARDS);

  /** Each is made once for all tests. */
  private static final Map<Long, WorkPlan> PLANS = new ConcurrentHashMap<>();

  @Test
  void a_replaced_part_goes_in_new_and_no_other_part_does_but_what_new_parts_need() {
    LongAdder fitted = new LongAdder();
    each(
        (answer, plan) -> {
          Set<Place> replaced = places(answer, Disposition.REPLACE);
          Set<Place> needed = BrakeRules.standard().parts(answer.job()).renewedBesideAnother();
          Set<Place> fittedNew = new HashSet<>();
          for (WorkStep step : plan.steps()) {
            for (FittedPart part : step.parts()) {
              if (needed.contains(part.part()) && !replaced.contains(part.part())) {
                assertThat(part.use()).as("%s at %s", part, step.id()).isIn(BESIDE_ANOTHER);
              } else {
                assertThat(part.use() == Use.NEW)
                    .as("%s at %s", part, step.id())
                    .isEqualTo(replaced.contains(part.part()));
              }
              if (part.use() == Use.NEW) {
                fittedNew.add(part.part());
              }
            }
          }
          fitted.add(fittedNew.size());
          if (plan.stops().isEmpty()) {
            assertThat(fittedNew).containsAll(replaced);
          }
        });
    assertThat(fitted.sum()).isGreaterThan(JOBS / 2);
  }

  @Test
  void what_is_adjusted_or_cleaned_has_its_step() {
    each(
        (answer, plan) -> {
          if (plan.stops().isEmpty()) {
            Set<Place> named =
                plan.steps().stream()
                    .flatMap(step -> step.because().stream())
                    .flatMap(because -> because.part().stream())
                    .collect(Collectors.toSet());
            assertThat(named)
                .containsAll(places(answer, Disposition.ADJUST))
                .containsAll(places(answer, Disposition.CLEAN));
          }
        });
  }

  @Test
  void nothing_dry_is_greased_and_every_step_says_what_put_it_there() {
    each(
        (answer, plan) ->
            assertThat(plan.steps())
                .allSatisfy(
                    step -> {
                      assertThat(step.greases()).noneMatch(Surface::isDry);
                      assertThat(step.because()).isNotEmpty();
                      assertThat(step.hold()).isNotEqualTo(step.passesWhen().isEmpty());
                    }));
  }

  @Test
  void steps_that_guard_hands_and_lives_come_in_their_order() {
    each(
        (answer, plan) ->
            answer
                .job()
                .wheelEnds()
                .map(WheelEnd::path)
                .forEach(
                    end -> {
                      List<WorkStep> steps = plan.forWheelEnd(end);
                      inOrder(steps, "ARRIVE-030", "SECURE-020");
                      inOrder(steps, "SECURE-020", "SECURE-030");
                      inOrder(steps, "ARRIVE-060", "SECURE-010");
                      inOrder(steps, "TEARDOWN-090", "TEARDOWN-120");
                      inOrder(steps, "SET-010", "SET-020");
                      for (String purge : List.of("240", "250", "270")) {
                        inOrder(steps, "ASSEMBLE-" + purge, "ASSEMBLE-320");
                      }
                      for (String set : List.of("030", "040", "050", "060")) {
                        inOrder(steps, "SET-020", "SET-" + set);
                      }
                    }));
  }

  @Test
  void no_air_comes_to_a_brake_between_draining_and_the_call_that_all_are_closed() {
    each(
        (answer, plan) ->
            number(plan.steps(), "SECURE-030")
                .ifPresent(
                    drained -> {
                      int closed = number(plan.steps(), "SET-010").orElse(plan.steps().size() + 1);
                      assertThat(plan.steps())
                          .filteredOn(step -> step.number() > drained && step.number() < closed)
                          .noneMatch(step -> step.air() == WorkStep.Air.UP);
                    }));
  }

  @Test
  void a_wheel_end_that_stops_has_no_step_beyond_its_stop_and_nothing_is_set_or_proved() {
    LongAdder stops = new LongAdder();
    each(
        (answer, plan) -> {
          Set<String> held =
              answer.decision().holds().stream()
                  .map(decision -> decision.part().wheelEnd().toString())
                  .collect(Collectors.toSet());
          assertThat(plan.stops().stream().map(stop -> stop.wheelEnd().toString()))
              .containsAll(held);
          for (Stop stop : plan.stops()) {
            stops.increment();
            assertThat(plan.steps())
                .filteredOn(step -> step.on().equals(stop.wheelEnd().toString()))
                .allMatch(step -> step.number() <= stop.step());
            assertThat(plan.steps()).noneMatch(step -> step.id().matches("(SET|PROVE)-.*"));
          }
        });
    assertThat(stops.sum()).isGreaterThan(100);
  }

  @Test
  void an_undecided_part_is_decided_before_it_is_put_in_or_before_the_vehicle_goes() {
    each(
        (answer, plan) -> {
          if (plan.stops().isEmpty()) {
            assertThat(
                    plan.steps().stream()
                        .flatMap(step -> step.undecided().stream())
                        .collect(Collectors.toSet()))
                .isEqualTo(places(answer, Disposition.UNDECIDED));
          }
        });
  }

  private static void each(BiConsumer<Answer, WorkPlan> test) {
    Seeds.each(
        JOBS,
        seed -> {
          Answer answer = Answer.of(seed);
          test.accept(
              answer, PLANS.computeIfAbsent(seed, one -> BrakeRules.standard().plan(answer.job())));
        });
  }

  private static Set<Place> places(Answer answer, Disposition disposition) {
    return answer.decision().decisions().stream()
        .filter(decision -> decision.disposition() == disposition)
        .map(Decision::part)
        .collect(Collectors.toSet());
  }

  private static void inOrder(List<WorkStep> steps, String first, String second) {
    Optional<Integer> before = number(steps, first);
    Optional<Integer> after = number(steps, second);
    if (before.isPresent() && after.isPresent()) {
      assertThat(before.get()).as("%s before %s", first, second).isLessThan(after.get());
    }
  }

  private static Optional<Integer> number(List<WorkStep> steps, String id) {
    return steps.stream().filter(step -> step.id().equals(id)).map(WorkStep::number).findFirst();
  }
}
