package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Stream;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.Evidence.Measured;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Sign;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Reading;
import org.brakerules.random.Answer;
import org.brakerules.random.Dice;
import org.brakerules.random.RandomJobs;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/** A worse brake never gets a better answer. */
class MonotoneTest {

  private static final int JOBS = 10_000;
  private static final Tables TABLES = Tables.load();
  private static final Set<Disposition> GOOD = Set.of(Disposition.REUSE, Disposition.CLEAN);

  private final BrakeRules rules = BrakeRules.standard();

  @Test
  void a_fault_that_is_seen_makes_no_part_better() {
    LongAdder tried = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = Answer.of(seed).job();
          List<Observation> unseen =
              Observation.all(job).stream()
                  .filter(one -> one.value() == Sign.NOT_SEEN)
                  .filter(one -> !RandomJobs.isGoodSign(one.place().kind(), one.property()))
                  .toList();
          if (!unseen.isEmpty()) {
            Observation fault = new Dice(seed).any(unseen);
            compare(Answer.of(seed), fault, Sign.SEEN);
            tried.increment();
          }
        });
    assertThat(tried.sum()).isGreaterThan(JOBS / 2);
  }

  @Test
  void a_reading_further_beyond_its_limit_makes_no_part_better() {
    LongAdder tried = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = Answer.of(seed).job();
          List<Check> all = beyond(Answer.of(seed).decision());
          List<Check> checks =
              all.stream()
                  .filter(check -> reading(job, check).isPresent())
                  .filter(check -> !failsTheOtherSideToo(check, all))
                  .toList();
          if (!checks.isEmpty()) {
            Check beyond = new Dice(seed).any(checks);
            Observation reading = reading(job, beyond).orElseThrow();
            compare(Answer.of(seed), reading, further((Measurement<?>) reading.value(), beyond));
            tried.increment();
          }
        });
    assertThat(tried.sum()).isGreaterThan(JOBS / 10);
  }

  private void compare(Answer answer, Observation changed, Object worse) {
    JobDecision before = answer.decision();
    JobDecision after = rules.decide(changed.changedTo(worse, answer.job()));
    assertThat(after.decisions()).hasSizeGreaterThanOrEqualTo(before.decisions().size());
    for (Decision was : before.decisions()) {
      Decision is = after.decision(was.part()).orElseThrow();
      if (was.disposition() == Disposition.REPLACE) {
        assertThat(is.disposition())
            .as("%s after %s became %s", was.part(), changed, worse)
            .isEqualTo(Disposition.REPLACE);
      }
      if (GOOD.contains(is.disposition())) {
        assertThat(was.disposition())
            .as("%s before %s became %s", was.part(), changed, worse)
            .isIn(GOOD)
            .isLessThanOrEqualTo(is.disposition());
      }
      if (was.hold()) {
        assertThat(is.hold()).as("hold of %s, %s", was.part(), changed).isTrue();
      }
    }
  }

  /** Limits that leave no room between them let a reading get worse on one side and better. */
  private static boolean failsTheOtherSideToo(Check check, List<Check> all) {
    return all.stream()
        .filter(other -> other.part().equals(check.part()))
        .filter(other -> other.property().equals(check.property()))
        .anyMatch(other -> isUpper(other) != isUpper(check));
  }

  private static boolean isUpper(Check check) {
    return check.limit().orElseThrow().comparison().isUpper();
  }

  private static Optional<Observation> reading(BrakeJob job, Check check) {
    return Observation.all(job).stream()
        .filter(one -> one.place().equals(check.part()))
        .filter(one -> one.property().equals(check.property()))
        .findFirst();
  }

  private static List<Check> beyond(JobDecision answer) {
    return evidence(answer.decisions())
        .filter(Measured.class::isInstance)
        .map(one -> ((Measured) one).check())
        .distinct()
        .toList();
  }

  private static Stream<Evidence> evidence(List<Decision> decisions) {
    return decisions.stream()
        .flatMap(decision -> decision.reasons().stream())
        .flatMap(reason -> reason.evidence().stream());
  }

  /** Every reading that fails moves away from the limit by the limit's own value. */
  @SuppressWarnings({"unchecked", "rawtypes"}) // a limit and its readings are of one kind
  private static Measurement<?> further(Measurement<?> measurement, Check beyond) {
    LimitInForce limit = beyond.limit().orElseThrow();
    List<Reading<?>> readings = new ArrayList<>();
    for (Reading<?> reading : measurement.readings()) {
      Quantity value = reading.value();
      boolean fails = !limit.comparison().passes(value, (Quantity) limit.value());
      Quantity moved =
          limit.comparison().isUpper() ? value.plus(limit.value()) : value.minus(value);
      readings.add(
          fails
              ? new Reading(
                  moved,
                  moved.toString(),
                  reading.station(),
                  reading.method(),
                  reading.uncertainty(),
                  reading.reservoirPressure(),
                  reading.moment())
              : reading);
    }
    return new Measurement(readings);
  }
}
