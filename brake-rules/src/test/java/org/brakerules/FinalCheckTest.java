package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import org.brakerules.finalcheck.CheckResult;
import org.brakerules.finalcheck.CheckResult.Status;
import org.brakerules.finalcheck.FinalCheck;
import org.brakerules.finalcheck.PlaceResult;
import org.brakerules.finalcheck.RecordRefusedException;
import org.brakerules.model.assembly.AssemblyRecord;
import org.brakerules.model.assembly.CheckedPlace;
import org.brakerules.model.assembly.RecordedCheck;
import org.brakerules.model.assembly.RecordedCheck.Result;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Sign;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.brakerules.random.Answer;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is released, and what keeps it back. */
class FinalCheckTest {

  private static final String LEFT = "axle2/left";
  private static final String STROKE = "FINAL-180";
  private static final BrakeRules RULES = BrakeRules.standard();

  @Test
  void nothing_is_released_before_anything_is_recorded() {
    FinalCheck check = RULES.finalCheck(SoundBrake.tube().job(), AssemblyRecord.EMPTY);
    assertThat(check.released()).isFalse();
    assertThat(check.places()).extracting(PlaceResult::on).containsExactly(LEFT, "vehicle");
    assertThat(left(check).checks())
        .extracting(CheckResult::status)
        .containsOnly(Status.NOT_RECORDED);
  }

  @Test
  void all_is_released_when_every_check_has_passed() {
    BrakeJob job = SoundBrake.tube().withPartner().job();
    FinalCheck check = RULES.finalCheck(job, allPassed(job));
    assertThat(left(check).keptBackBy()).isEmpty();
    assertThat(left(check).by()).isEqualTo("R. Hale, " + job.date());
    assertThat(left(check).checks())
        .filteredOn(CheckResult::keepsBack)
        .as("what keeps it back")
        .isEmpty();
    assertThat(check.released()).isTrue();
  }

  @Test
  void new_linings_at_one_end_alone_keep_the_vehicle_back() {
    BrakeJob job = SoundBrake.tube().with("lining/upper", "cracked", Sign.SEEN).job();
    FinalCheck check = RULES.finalCheck(job, allPassed(job));
    PlaceResult vehicle = check.places().get(1);
    assertThat(vehicle.on()).isEqualTo("vehicle");
    assertThat(left(check).released()).isTrue();
    assertThat(vehicle.keptBackBy())
        .singleElement()
        .asString()
        .startsWith("axle2/right, the other end of the axle, is not in this job.")
        .contains("New there too: ", "and what else the parts list orders there");
    assertThat(check.released()).isFalse();
    assertThat(RULES.plan(job).isWholeWork()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"lining/upper", "return-spring", "chamber", "slack-adjuster"})
  void what_went_in_new_at_one_end_alone_keeps_the_vehicle_back(String part) {
    BrakeJob job = SoundBrake.tube().fittedNew(part).job();
    FinalCheck check = RULES.finalCheck(job, allPassed(job));
    assertThat(check.places().get(1).keptBackBy())
        .anyMatch(
            why -> why.startsWith("axle2/right, the other end of the axle, is not in this job."));
    assertThat(RULES.plan(SoundBrake.tube().withPartner().fittedNew(part).job()).otherEnds())
        .isEmpty();
  }

  @Test
  void new_linings_at_both_ends_of_a_job_are_asked_of_no_other_end() {
    BrakeJob job = SoundBrake.tube().withPartner().with("lining/upper", "cracked", Sign.SEEN).job();
    assertThat(RULES.plan(job).otherEnds()).isEmpty();
    assertThat(RULES.finalCheck(job, allPassed(job)).released()).isTrue();
  }

  @Test
  void strokes_of_both_ends_that_disagree_keep_the_vehicle_back() {
    BrakeJob job = SoundBrake.tube().withPartner().job();
    FinalCheck check = RULES.finalCheck(job, AssemblyRecord.EMPTY);
    PlaceResult vehicle = check.places().get(check.places().size() - 1);
    assertThat(vehicle.checks())
        .filteredOn(one -> one.id().equals("FINAL-280"))
        .singleElement()
        .satisfies(
            strokes -> {
              assertThat(strokes.keepsBack()).isTrue();
              assertThat(strokes.limits()).isEmpty();
              assertThat(strokes.how()).contains("the maker's figure");
              assertThat(strokes.remedy()).contains("bushings, spline, bracket and drum");
            });
  }

  @Test
  void one_failed_check_keeps_its_wheel_end_back_with_consequence_and_remedy() {
    BrakeJob job = SoundBrake.tube().job();
    FinalCheck check = RULES.finalCheck(job, with(job, failed("FINAL-010")));
    CheckResult seals = result(check, "FINAL-010");
    assertThat(seals.status()).isEqualTo(Status.FAILED);
    assertThat(seals.found()).isEqualTo("recorded as failed");
    assertThat(seals.consequence()).isEqualTo("Grease reaches drum and linings, or cannot leave.");
    assertThat(seals.remedy()).isNotEmpty();
    assertThat(left(check).released()).isFalse();
    assertThat(check.released()).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2 in    | full-application | 85 psi  | after-work | PASSED       | 2 in is inside its limit
          2.01 in | full-application | 85 psi  | after-work | FAILED       | 2.01 in is beyond its limit
          1.5 in  | full-application | 60 psi  | after-work | NOT_RECORDED | 1.5 in was not taken as its limit asks: place, method, moment or pressure
          1.5 in  | by-eye           | 85 psi  | after-work | NOT_RECORDED | 1.5 in was not taken as its limit asks: place, method, moment or pressure
          1.5 in  | full-application | 85 psi  | as-found   | NOT_RECORDED | 1.5 in was read as found, not after the work
          """)
  void an_applied_stroke_counts_only_as_its_limit_asks(
      String value, String method, String pressure, String moment, Status status, String found) {
    BrakeJob job = SoundBrake.tube().job();
    Reading<Length> reading =
        Reading.of(Length.parse(value), Station.WHOLE_PART, Method.byId(method).orElseThrow())
            .atReservoirPressure(Pressure.parse(pressure))
            .taken(moment.equals("as-found") ? Moment.AS_FOUND : Moment.AFTER_WORK);
    CheckResult stroke =
        result(
            RULES.finalCheck(
                job,
                with(job, new RecordedCheck(STROKE, Optional.empty(), Measurement.of(reading)))),
            STROKE);
    assertThat(stroke.status()).isEqualTo(status);
    assertThat(stroke.found()).isEqualTo(found);
  }

  @Test
  void passed_alone_is_no_reading_where_a_limit_is_in_force() {
    BrakeJob job = SoundBrake.tube().job();
    CheckResult stroke = result(RULES.finalCheck(job, with(job, passed(STROKE))), STROKE);
    assertThat(stroke.status()).isEqualTo(Status.NOT_RECORDED);
    assertThat(stroke.found()).isEqualTo("a reading is wanted: at most 2 in; write it down");
  }

  @Test
  void a_hold_or_an_undecided_part_never_releases() {
    LongAdder keptBack = new LongAdder();
    Seeds.each(
        150,
        seed -> {
          Answer answer = Answer.of(seed);
          FinalCheck check = RULES.finalCheck(answer.job(), allPassed(answer.job()));
          for (PlaceResult place : check.places()) {
            boolean open =
                answer.decision().decisions().stream()
                    .filter(one -> one.part().wheelEnd().toString().equals(place.on()))
                    .anyMatch(one -> one.hold() || one.disposition() == Disposition.UNDECIDED);
            if (open) {
              assertThat(place.released()).as(place.on()).isFalse();
              keptBack.increment();
            }
          }
        });
    assertThat(keptBack.sum()).isGreaterThan(50);
  }

  @Test
  void while_one_end_is_on_hold_the_other_is_not_proved_and_not_released() {
    BrakeJob job = SoundBrake.tube().withPartner().with("drum", "outsideCrack", Sign.SEEN).job();
    FinalCheck check = RULES.finalCheck(job, allPassed(job));
    assertThat(check.places().get(1).on()).isEqualTo("axle2/right");
    assertThat(check.places().get(1).keptBackBy())
        .anySatisfy(why -> assertThat(why).startsWith("the plan stops at axle2/left, step "));
  }

  @Test
  void the_vehicle_is_not_released_while_a_wheel_end_is_not() {
    BrakeJob job = SoundBrake.tube().job();
    FinalCheck check = RULES.finalCheck(job, with(job, failed("FINAL-150")));
    PlaceResult vehicle = check.places().get(1);
    assertThat(vehicle.on()).isEqualTo("vehicle");
    assertThat(vehicle.checks()).noneMatch(CheckResult::keepsBack);
    assertThat(vehicle.keptBackBy()).contains("axle2/left is not released");
    assertThat(vehicle.released()).isFalse();
  }

  @Test
  void a_record_that_does_not_fit_the_job_is_refused_with_every_problem() {
    BrakeJob job = SoundBrake.tube().job();
    AssemblyRecord record =
        new AssemblyRecord(
            List.of(
                new CheckedPlace(
                    LEFT, "R. Hale", job.date().minusDays(1), List.of(passed("FINAL-130"))),
                new CheckedPlace("axle3/left", "R. Hale", job.date(), List.of())));
    assertThatThrownBy(() -> RULES.finalCheck(job, record))
        .isInstanceOfSatisfying(
            RecordRefusedException.class,
            refused -> {
              assertThat(refused.problems()).hasSize(3);
              assertThat(refused.problems().get(0))
                  .endsWith(
                      "is a day before the inspection on "
                          + job.date()
                          + "; write the day of the final check.");
              assertThat(refused.problems().get(1))
                  .startsWith("\"FINAL-130\" is no check that the plan asks for at axle2/left");
              assertThat(refused.problems().get(2))
                  .isEqualTo(
                      "\"axle3/left\" is no wheel end of this job; did you mean \"axle2/left\"?");
            });
  }

  /** Every check that the plan asks for has passed; what is read lies inside its limits. */
  private static AssemblyRecord allPassed(BrakeJob job) {
    return with(job, passed("FINAL-000"));
  }

  /** The same, with one check recorded otherwise. */
  private static AssemblyRecord with(BrakeJob job, RecordedCheck other) {
    LocalDate day = job.date();
    List<CheckedPlace> places = new ArrayList<>();
    for (PlaceResult place : RULES.finalCheck(job, AssemblyRecord.EMPTY).places()) {
      List<RecordedCheck> checks =
          place.checks().stream()
              .map(check -> check.id().equals(other.check()) ? other : good(check))
              .toList();
      places.add(new CheckedPlace(place.on(), "R. Hale", day, checks));
    }
    return new AssemblyRecord(places);
  }

  private static RecordedCheck good(CheckResult check) {
    Measurement<Length> reading =
        switch (check.id()) {
          case "FINAL-040" -> read("0.015 in", Station.SPLINE_END, Method.DIAL_INDICATOR);
          case "FINAL-050" ->
              read("0.006 in", Station.HEAD_END, Method.DIAL_INDICATOR_LIFTED_BY_HAND);
          case "FINAL-060" ->
              read("0.006 in", Station.SPLINE_END, Method.DIAL_INDICATOR_LIFTED_BY_HAND);
          case "FINAL-170" -> read("0.5 in", Station.WHOLE_PART, Method.PRIED_BY_HAND);
          case STROKE, "FINAL-250" ->
              Measurement.of(
                  Reading.of(Length.parse("1.7 in"), Station.WHOLE_PART, Method.FULL_APPLICATION)
                      .atReservoirPressure(Pressure.parse("85 psi")));
          default -> Measurement.notTaken();
        };
    return new RecordedCheck(check.id(), Optional.of(Result.PASSED), reading);
  }

  private static Measurement<Length> read(String value, Station station, Method method) {
    return Measurement.of(Length.parse(value), station, method);
  }

  private static RecordedCheck passed(String id) {
    return new RecordedCheck(id, Optional.of(Result.PASSED), Measurement.notTaken());
  }

  private static RecordedCheck failed(String id) {
    return new RecordedCheck(id, Optional.of(Result.FAILED), Measurement.notTaken());
  }

  private static PlaceResult left(FinalCheck check) {
    return check.places().get(0);
  }

  private static CheckResult result(FinalCheck check, String id) {
    return left(check).checks().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
