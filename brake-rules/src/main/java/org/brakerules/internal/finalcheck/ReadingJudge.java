package org.brakerules.internal.finalcheck;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.finalcheck.CheckResult;
import org.brakerules.finalcheck.CheckResult.Status;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.assembly.RecordedCheck;
import org.brakerules.model.assembly.RecordedCheck.Result;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Tag;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Station;

/** Judges what was recorded of one check. */
final class ReadingJudge {

  private final BrakeJob job;
  private final Tables tables;
  private final JobDecision decision;
  private final Checks checks;

  /** How a check stands, and what was found. */
  private record Verdict(Status status, String found) {}

  ReadingJudge(BrakeJob job, Tables tables, JobDecision decision) {
    this.job = job;
    this.tables = tables;
    this.decision = decision;
    this.checks = Checks.of(tables, job);
  }

  /**
   * Judges one check.
   *
   * @param recorded what was recorded of it; empty if nothing was
   * @param end the wheel end; empty if it is a check of the vehicle
   */
  CheckResult judge(FinalRow row, Optional<RecordedCheck> recorded, Optional<WheelEnd> end) {
    Measurement<Length> reading =
        recorded.map(RecordedCheck::reading).orElse(Measurement.notTaken());
    List<Check> against = end.map(one -> against(row, one, reading)).orElse(List.of());
    List<LimitInForce> limits =
        against.stream().flatMap(check -> check.limit().stream()).distinct().toList();
    Verdict verdict =
        recorded
            .map(one -> verdict(one, against, limits, !row.limits().isEmpty()))
            .orElse(new Verdict(Status.NOT_RECORDED, "not recorded yet"));
    return new CheckResult(
        row.id(),
        row.question(),
        row.how(),
        verdict.status(),
        verdict.found(),
        limits,
        row.consequence(),
        row.remedy(),
        row.releases(),
        row.source());
  }

  private static Verdict verdict(
      RecordedCheck recorded, List<Check> against, List<LimitInForce> limits, boolean measured) {
    if (recorded.result().filter(Result.FAILED::equals).isPresent()) {
      return new Verdict(Status.FAILED, "recorded as failed");
    }
    if (measured && recorded.reading().taken()) {
      return limits.isEmpty() ? withoutLimit(recorded) : read(recorded, against);
    }
    return limits.isEmpty()
        ? new Verdict(Status.PASSED, "recorded as passed")
        : new Verdict(
            Status.NOT_RECORDED, "a reading is wanted: " + inWords(limits) + "; write it down");
  }

  private static Verdict withoutLimit(RecordedCheck recorded) {
    return recorded.result().isPresent()
        ? new Verdict(Status.PASSED, written(recorded) + ", recorded as passed")
        : new Verdict(
            Status.NOT_RECORDED,
            written(recorded)
                + ", and no limit is known; state the maker's in the job, or record the result");
  }

  private static Verdict read(RecordedCheck recorded, List<Check> against) {
    List<CheckStatus> statuses = against.stream().map(Check::status).toList();
    String found = written(recorded);
    if (recorded.reading().readings().stream().anyMatch(one -> one.moment() == Moment.AS_FOUND)) {
      return new Verdict(Status.NOT_RECORDED, found + " was read as found, not after the work");
    }
    if (statuses.contains(CheckStatus.BEYOND)) {
      return new Verdict(Status.FAILED, found + " is beyond its limit");
    }
    if (statuses.contains(CheckStatus.WRONG_METHOD)) {
      return new Verdict(
          Status.NOT_RECORDED,
          found + " was not taken as its limit asks: place, method, moment or pressure");
    }
    return statuses.contains(CheckStatus.UNPROVEN)
        ? new Verdict(Status.NOT_RECORDED, found + " is too close to its limit to tell")
        : new Verdict(Status.PASSED, found + " is inside its limit");
  }

  private static String written(RecordedCheck recorded) {
    return recorded.reading().readings().stream()
        .map(reading -> reading.written())
        .collect(Collectors.joining(", "));
  }

  private static String inWords(List<LimitInForce> limits) {
    return limits.stream().map(LimitInForce::inWords).collect(Collectors.joining(", "));
  }

  private List<Check> against(FinalRow row, WheelEnd end, Measurement<Length> reading) {
    if (row.limits().isEmpty()) {
      return List.of();
    }
    Limit limit = tables.limits().first(row.limits().get(0)).orElseThrow();
    Place place =
        end.path()
            .place(
                limit.part(),
                row.station().filter(limit.part().stations()::contains).orElse(Station.WHOLE_PART));
    Subject subject = subject(end, FinishedPart.of(tag(place), limit.property(), reading));
    return checks.of(subject).stream()
        .filter(check -> row.limits().contains(check.limitId()))
        .toList();
  }

  private Tag tag(Place place) {
    return decision
        .decision(place)
        .filter(one -> one.disposition() == Disposition.REPLACE)
        .map(one -> Tag.fittedNew(place))
        .orElse(Tag.asFound(place));
  }

  private Subject subject(WheelEnd end, Part part) {
    for (VehicleUnit unit : job.units()) {
      for (Axle axle : unit.axles()) {
        if (axle.wheelEnds().contains(end)) {
          return new Subject(unit.builtOn(), axle.kind(), end.layout(), part);
        }
      }
    }
    throw new IllegalArgumentException(end.path() + " is no wheel end of the job.");
  }
}
