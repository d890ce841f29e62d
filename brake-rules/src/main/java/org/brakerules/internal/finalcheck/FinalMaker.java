package org.brakerules.internal.finalcheck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.finalcheck.CheckResult;
import org.brakerules.finalcheck.FinalCheck;
import org.brakerules.finalcheck.PlaceResult;
import org.brakerules.finalcheck.RecordRefusedException;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.assembly.AssemblyRecord;
import org.brakerules.model.assembly.CheckedPlace;
import org.brakerules.model.assembly.RecordedCheck;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.text.NearestName;
import org.brakerules.parts.OtherEnd;
import org.brakerules.work.Stop;
import org.brakerules.work.WorkPlan;

/** Judges the record of finished work against the plan of its job. */
public final class FinalMaker {

  private final BrakeJob job;
  private final FinalTable table;
  private final JobDecision decision;
  private final WorkPlan plan;
  private final AssemblyRecord record;
  private final ReadingJudge judge;
  private final List<String> problems = new ArrayList<>();

  /**
   * Lays plan and record side by side.
   *
   * @param decision the decisions on the job
   * @param plan its order of work
   * @param record what was recorded of the finished work
   */
  public FinalMaker(
      BrakeJob job,
      Tables tables,
      FinalTable table,
      JobDecision decision,
      WorkPlan plan,
      AssemblyRecord record) {
    this.job = job;
    this.table = table;
    this.decision = decision;
    this.plan = plan;
    this.record = record;
    this.judge = new ReadingJudge(job, tables, decision);
  }

  /**
   * The final check.
   *
   * @throws RecordRefusedException if the record names a place or a check the plan does not have
   */
  public FinalCheck check() {
    List<PlaceResult> places = new ArrayList<>();
    job.wheelEnds()
        .sorted(Comparator.comparing(WheelEnd::path))
        .forEach(end -> places.add(wheelEnd(end)));
    List<String> keptBack =
        Stream.concat(
                places.stream()
                    .filter(place -> !place.released())
                    .map(place -> place.on() + " is not released"),
                plan.otherEnds().stream().map(OtherEnd::inWords))
            .toList();
    places.add(place(CheckedPlace.VEHICLE, keptBack, due("", true), Optional.empty()));
    refuseOtherPlaces(places.stream().map(PlaceResult::on).toList());
    if (!problems.isEmpty()) {
      throw new RecordRefusedException(problems);
    }
    return new FinalCheck(decision.ruleBase(), job.reference(), job.date(), job.ruleSet(), places);
  }

  private PlaceResult wheelEnd(WheelEnd end) {
    String path = end.path().toString();
    return place(path, keptBackBy(end), due(path, false), Optional.of(end));
  }

  private List<FinalRow> due(String on, boolean ofVehicle) {
    List<String> steps =
        plan.steps().stream()
            .filter(step -> ofVehicle || step.on().equals(on))
            .map(step -> step.id())
            .toList();
    return table.rows().stream()
        .filter(row -> row.ofVehicle() == ofVehicle)
        .filter(row -> row.steps().stream().anyMatch(steps::contains))
        .toList();
  }

  private PlaceResult place(
      String on, List<String> keptBackBy, List<FinalRow> due, Optional<WheelEnd> end) {
    Optional<CheckedPlace> recorded = record.on(on);
    recorded.ifPresent(this::refuseEarlier);
    recorded.ifPresent(place -> refuseOtherChecks(place, due));
    List<CheckResult> checks =
        due.stream()
            .map(row -> judge.judge(row, recorded.flatMap(one -> one.check(row.id())), end))
            .toList();
    String by = recorded.map(one -> one.by() + ", " + one.date()).orElse("");
    return new PlaceResult(on, by, keptBackBy, checks);
  }

  /** While one wheel end stops, no brake of the vehicle is proved, so that none is released. */
  private List<String> keptBackBy(WheelEnd end) {
    Stream<String> parts =
        decision.decisions().stream()
            .filter(one -> one.part().wheelEnd().equals(end.path()))
            .flatMap(one -> keptBackBy(one).stream());
    Stream<String> stops = plan.stops().stream().map(FinalMaker::keptBackBy);
    return Stream.concat(parts, stops).toList();
  }

  private static Optional<String> keptBackBy(Decision decision) {
    if (decision.hold()) {
      return Optional.of(decision.part().inWords() + " is on hold");
    }
    return decision.disposition() == Disposition.UNDECIDED
        ? Optional.of(
            decision.part().inWords()
                + " is undecided; state in the job what is known now, and ask again")
        : Optional.empty();
  }

  private static String keptBackBy(Stop stop) {
    return "the plan stops at " + stop.wheelEnd() + ", step " + stop.step();
  }

  private void refuseEarlier(CheckedPlace place) {
    if (place.date().isBefore(job.date())) {
      problems.add(
          "\""
              + place.date()
              + "\" at "
              + place.on()
              + " is a day before the inspection on "
              + job.date()
              + "; write the day of the final check.");
    }
  }

  private void refuseOtherPlaces(List<String> places) {
    record.records().stream()
        .map(CheckedPlace::on)
        .filter(on -> !places.contains(on))
        .map(on -> unknown(on, "is no wheel end of this job", places))
        .forEach(problems::add);
  }

  private void refuseOtherChecks(CheckedPlace place, List<FinalRow> due) {
    List<String> ids = due.stream().map(FinalRow::id).toList();
    place.checks().stream()
        .map(RecordedCheck::check)
        .filter(id -> !ids.contains(id))
        .map(id -> unknown(id, "is no check that the plan asks for at " + place.on(), ids))
        .forEach(problems::add);
  }

  private static String unknown(String name, String what, List<String> known) {
    return "\""
        + name
        + "\" "
        + what
        + NearestName.of(name, known)
            .map(near -> "; did you mean \"" + near + "\"?")
            .orElse("; known are " + String.join(", ", known) + ".");
  }
}
