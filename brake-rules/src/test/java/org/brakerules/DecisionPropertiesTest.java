package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;
import org.brakerules.internal.check.LimitsOfJob;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Point.Demand;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Sign;
import org.brakerules.model.reading.Measurement;
import org.brakerules.random.Answer;
import org.brakerules.random.Records;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/** What holds for the decision on any job at all. */
class DecisionPropertiesTest {

  private static final int JOBS = 10_000;
  private static final Tables TABLES = Tables.load();
  private static final Set<Disposition> GOES_BACK =
      Set.of(Disposition.REUSE, Disposition.CLEAN, Disposition.ADJUST);

  @Test
  void every_part_mentioned_or_expected_has_exactly_one_decision_in_path_order() {
    Seeds.each(
        JOBS,
        seed -> {
          Answer answer = Answer.of(seed);
          List<Place> decided = answer.decision().decisions().stream().map(Decision::part).toList();
          assertThat(decided).containsExactlyElementsOf(places(answer.job()));
        });
  }

  @Test
  void the_disposition_is_the_worst_of_the_reasons_and_hold_comes_from_a_hold_alone() {
    Map<Disposition, Integer> seen = new ConcurrentHashMap<>();
    LongAdder holds = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          for (Decision one : Answer.of(seed).decision().decisions()) {
            List<Verdict> verdicts = one.reasons().stream().map(Reason::verdict).toList();
            assertThat(verdicts).as("%s", one.part()).isNotEmpty();
            assertThat(one.disposition()).as("%s", one.part()).isEqualTo(worst(verdicts));
            assertThat(one.hold()).as("%s", one.part()).isEqualTo(verdicts.contains(Verdict.HOLD));
            seen.merge(one.disposition(), 1, Integer::sum);
            holds.add(one.hold() ? 1 : 0);
          }
        });
    assertThat(seen).containsOnlyKeys(Disposition.values());
    assertThat(seen.values()).allSatisfy(count -> assertThat(count).isGreaterThan(20));
    assertThat(holds.sum()).isGreaterThan(500);
  }

  @Test
  void a_part_goes_back_only_if_nothing_is_needed_and_every_point_was_looked_at() {
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = Answer.of(seed).job();
          JobDecision answer = Answer.of(seed).decision();
          for (VehicleUnit unit : job.units()) {
            for (Axle axle : unit.axles()) {
              for (WheelEnd end : axle.wheelEnds()) {
                for (Part part : end.parts()) {
                  Subject subject = new Subject(unit.builtOn(), axle.kind(), end.layout(), part);
                  checkPart(job, subject, answer);
                }
              }
            }
          }
        });
  }

  private static List<Place> places(BrakeJob job) {
    Set<Place> places = new TreeSet<>();
    Set<Place> notFitted = new HashSet<>();
    for (WheelEnd end : job.wheelEnds().toList()) {
      places.addAll(end.expectedParts(job.scope()));
      for (Part part : end.parts()) {
        boolean notFitting = part.presence() == Presence.NOT_FITTED;
        if (notFitting && !part.partKind().isEssential()) {
          notFitted.add(part.place());
        } else if (!notFitting) {
          places.add(part.place());
        }
      }
    }
    places.removeAll(notFitted);
    return new ArrayList<>(places);
  }

  private static Disposition worst(List<Verdict> verdicts) {
    return verdicts.stream()
        .map(Verdict::disposition)
        .max(Enum::compareTo)
        .orElse(Disposition.REUSE);
  }

  private static void checkPart(BrakeJob job, Subject subject, JobDecision answer) {
    Part part = subject.part();
    answer
        .decision(part.place())
        .filter(one -> GOES_BACK.contains(one.disposition()))
        .ifPresent(
            one -> {
              assertThat(one.needed()).as("%s", part.place()).isEmpty();
              assertThat(open(job, subject)).as("%s goes back", part).isEmpty();
            });
  }

  /** The points a part needs by the tables alone, that the job leaves open. */
  private static List<String> open(BrakeJob job, Subject subject) {
    return TABLES.points().of(subject.part().partKind()).stream()
        .filter(point -> job.scope().reaches(point.from()))
        .filter(point -> point.selector().fit(subject) != Fit.NO)
        .filter(
            point ->
                point.demand() == Demand.ALWAYS
                    || (point.demand() == Demand.WITH_LIMIT && hasLimit(job, point, subject)))
        .filter(point -> isOpen(point, subject))
        .map(Point::id)
        .toList();
  }

  /** A row without a value is a limit only where the maker gives one. */
  private static boolean hasLimit(BrakeJob job, Point point, Subject subject) {
    LimitsOfJob limits =
        new LimitsOfJob(TABLES.limits(), job.date(), job.ruleSet(), job.makersLimits());
    String path = subject.part().place().toString();
    return TABLES.limits().of(point.part(), point.property().name()).stream()
        .map(Limit::id)
        .distinct()
        .anyMatch(
            id ->
                limits.rows(id, subject).stream().anyMatch(row -> !row.limit().written().isEmpty())
                    || job.makersLimits().stream()
                        .anyMatch(one -> one.limit().equals(id) && one.covers(path)));
  }

  private static boolean isOpen(Point point, Subject subject) {
    Object value =
        switch (point.owner()) {
          case PART -> Records.valueOf(subject.part(), point.property().name());
          case LAYOUT -> Records.valueOf(subject.layout(), point.property().name());
          case VEHICLE -> subject.builtOn();
        };
    return value instanceof Measurement<?> measurement
        ? !measurement.taken()
        : Set.of(Sign.NOT_CHECKED, Optional.empty()).contains(value)
            || value.toString().equals("UNKNOWN");
  }
}
