package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Stream;
import org.brakerules.internal.table.Point.Demand;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.Evidence.Measured;
import org.brakerules.model.decision.Evidence.Stated;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.reading.Contradiction;
import org.brakerules.random.Answer;
import org.brakerules.random.Dice;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/** Less knowledge never makes a part good, and keeps no part bad. */
class LessKnownTest {

  private static final int JOBS = 10_000;
  private static final Tables TABLES = Tables.load();

  private final BrakeRules rules = BrakeRules.standard();

  /**
   * Points beyond the scope, of another configuration, or on demand only are left out: a job may
   * leave them open without a word, whatever they would have shown.
   */
  @Test
  void an_observation_taken_back_never_lets_its_part_go_back_unseen() {
    LongAdder tried = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = Answer.of(seed).job();
          List<Observation> needed =
              Observation.all(job).stream()
                  .filter(Observation::isStated)
                  .filter(one -> isNeeded(one, job))
                  .toList();
          if (!needed.isEmpty()) {
            Observation taken = new Dice(seed).any(needed);
            Decision after = decision(taken.changedTo(taken.blank(), job), taken.place());
            assertThat(after.disposition())
                .as("%s without %s", taken.place(), taken)
                .isIn(Disposition.UNDECIDED, Disposition.REPLACE);
            tried.increment();
          }
        });
    assertThat(tried.sum()).isGreaterThan(JOBS / 2);
  }

  @Test
  void a_replacement_does_not_outlast_the_one_observation_it_rests_on() {
    LongAdder tried = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = Answer.of(seed).job();
          JobDecision before = Answer.of(seed).decision();
          List<Observation> alone =
              Observation.all(job).stream()
                  .filter(one -> one.isStated() && restsOn(one, before))
                  .toList();
          if (!alone.isEmpty()) {
            Observation taken = new Dice(seed).any(alone);
            Decision after = decision(taken.changedTo(taken.blank(), job), taken.place());
            assertThat(after.disposition())
                .as("%s without %s", taken.place(), taken)
                .isNotEqualTo(Disposition.REPLACE);
            tried.increment();
          }
        });
    assertThat(tried.sum()).isGreaterThan(JOBS / 20);
  }

  /**
   * What depended on a replaced part may go back once nothing says any more that it is replaced.
   */
  @Test
  void another_part_goes_back_only_if_its_reasons_spoke_of_the_part_no_longer_seen() {
    LongAdder tried = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = Answer.of(seed).job();
          List<Observation> stated =
              Observation.all(job).stream().filter(Observation::isStated).toList();
          if (stated.isEmpty()) {
            return;
          }
          Observation taken = new Dice(seed).any(stated);
          JobDecision before = Answer.of(seed).decision();
          JobDecision after = rules.decide(taken.changedTo(taken.blank(), job));
          Set<Place> spokenOf = dependents(before, taken.place());
          for (Decision one : after.decisions()) {
            if (one.disposition() == Disposition.REUSE && !isReuse(before, one.part())) {
              assertThat(spokenOf).as("without %s", taken).contains(one.part());
              tried.increment();
            }
          }
        });
    assertThat(tried.sum()).isGreaterThan(10);
  }

  private Decision decision(BrakeJob job, Place place) {
    return rules.decide(job).decision(place).orElseThrow();
  }

  private static boolean isNeeded(Observation one, BrakeJob job) {
    return TABLES.points().of(one.place().kind()).stream()
        .filter(point -> point.ofPart() && point.property().name().equals(one.property()))
        .filter(point -> job.scope().reaches(point.from()))
        .filter(point -> point.demand() == Demand.ALWAYS)
        .anyMatch(point -> point.selector().fit(one.subject()) != Fit.NO);
  }

  private static Stream<Evidence> evidence(List<Decision> decisions) {
    return decisions.stream()
        .flatMap(decision -> decision.reasons().stream())
        .flatMap(reason -> reason.evidence().stream());
  }

  /** Whether each reason to replace the part has this observation of it as its one finding. */
  private static boolean restsOn(Observation one, JobDecision answer) {
    List<Reason> replacing =
        answer.decision(one.place()).orElseThrow().reasons().stream()
            .filter(reason -> reason.verdict() == Verdict.REPLACE)
            .toList();
    return !replacing.isEmpty()
        && replacing.stream()
            .allMatch(
                reason -> reason.evidence().size() == 1 && isOf(one, reason.evidence().get(0)));
  }

  private static boolean isOf(Observation one, Evidence evidence) {
    if (evidence instanceof Measured measured) {
      return measured.check().part().equals(one.place())
          && measured.check().property().equals(one.property());
    }
    return evidence instanceof Stated stated
        && stated.part().equals(one.place())
        && stated.property().equals(one.property());
  }

  private static boolean isReuse(JobDecision answer, Place place) {
    return answer.decision(place).orElseThrow().disposition() == Disposition.REUSE;
  }

  /** The part itself and every part with a reason that speaks of one already in the list. */
  private static Set<Place> dependents(JobDecision answer, Place part) {
    Set<Place> found = new HashSet<>(Set.of(part));
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Decision one : answer.decisions()) {
        if (!found.contains(one.part()) && speaksOf(one, found)) {
          grows = found.add(one.part());
        }
      }
    }
    return found;
  }

  private static boolean speaksOf(Decision one, Set<Place> parts) {
    return evidence(List.of(one))
        .anyMatch(evidence -> parts.stream().anyMatch(at -> speaksOf(evidence, at)));
  }

  private static boolean speaksOf(Evidence evidence, Place part) {
    if (evidence instanceof Measured measured) {
      return measured.check().part().equals(part);
    }
    if (evidence instanceof Stated stated) {
      return stated.part().equals(part);
    }
    if (evidence instanceof Evidence.UnlikePartner unlike) {
      return part.kind() == PartKind.SLACK_ADJUSTER
          && List.of(part.wheelEnd(), part.wheelEnd().partner()).contains(unlike.wheelEnd());
    }
    if (evidence instanceof Evidence.ReadingsContradict two) {
      return two.part().wheelEnd().equals(part.wheelEnd())
          && (two.part().equals(part)
              || two.contradiction() == Contradiction.JOURNAL_IN_BORE
                  && part.kind() == PartKind.CAMSHAFT);
    }
    return evidence instanceof Evidence.AlsoReplaced also
        && also.kind() == part.kind()
        && also.wheelEnd().equals(part.wheelEnd());
  }
}
