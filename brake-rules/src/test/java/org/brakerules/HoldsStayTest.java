package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.table.TestPressure;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.Sign;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.random.Answer;
import org.brakerules.random.Dice;
import org.brakerules.random.RandomJobs;
import org.brakerules.random.Seeds;
import org.junit.jupiter.api.Test;

/** Work that must stop is not let go on because something more was found. */
class HoldsStayTest {

  private static final int JOBS = 10_000;

  /** How many findings are added to a job at once. */
  private static final int MORE = 5;

  private static final Tables TABLES = Tables.load();

  private final BrakeRules rules = BrakeRules.standard();

  @Test
  void faults_seen_in_addition_let_no_hold_go() {
    LongAdder holds = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          List<Observation> unseen =
              Observation.all(Answer.of(seed).job()).stream()
                  .filter(one -> one.value() == Sign.NOT_SEEN || one.value() == Sign.NOT_CHECKED)
                  .filter(one -> !RandomJobs.isGoodSign(one.place().kind(), one.property()))
                  .toList();
          holds.add(compare(seed, some(seed, unseen), one -> Sign.SEEN));
        });
    assertThat(holds.sum()).isGreaterThan(500);
  }

  @Test
  void readings_beyond_their_limits_in_addition_let_no_hold_go() {
    LongAdder holds = new LongAdder();
    Seeds.each(
        JOBS,
        seed -> {
          BrakeJob job = Answer.of(seed).job();
          List<Observation> limited =
              Observation.all(job).stream()
                  .filter(one -> one.value() instanceof Measurement<?>)
                  .filter(one -> beyond(one, job).isPresent())
                  .toList();
          holds.add(
              compare(seed, some(seed, limited), one -> withOneMore(one, beyond(one, job).get())));
        });
    assertThat(holds.sum()).isGreaterThan(300);
  }

  /** Gives another value to an observation. */
  private interface Added {
    Object to(Observation observation);
  }

  /** The holds that had to stay. */
  private int compare(long seed, List<Observation> changed, Added added) {
    List<Decision> holds = Answer.of(seed).decision().holds();
    if (holds.isEmpty() || changed.isEmpty()) {
      return 0;
    }
    BrakeJob worse = Answer.of(seed).job();
    for (Observation one : changed) {
      worse = one.changedTo(added.to(one), worse);
    }
    JobDecision after = rules.decide(worse);
    for (Decision hold : holds) {
      assertThat(after.decision(hold.part()).orElseThrow().hold())
          .as("hold of %s after %s got worse", hold.part(), changed)
          .isTrue();
    }
    return holds.size();
  }

  private static List<Observation> some(long seed, List<Observation> observations) {
    Dice dice = new Dice(seed);
    List<Observation> some = new ArrayList<>();
    for (int i = 0; i < MORE && !observations.isEmpty(); i++) {
      Observation one = dice.any(observations);
      if (some.stream().noneMatch(other -> other.toString().equals(one.toString()))) {
        some.add(one);
      }
    }
    return some;
  }

  /** A reading as its limit wants it, beyond the limit by the limit itself; none without one. */
  private static Optional<Reading<?>> beyond(Observation one, BrakeJob job) {
    return TABLES.limits().idsFor(one.place().kind()).stream()
        .flatMap(id -> TABLES.limits().rows(id).stream())
        .filter(row -> row.limit().property().equals(one.property()))
        .filter(row -> row.limit().holds(job.date(), job.ruleSet()))
        .filter(row -> row.selector().fit(one.subject()) == Fit.YES)
        .flatMap(
            row ->
                row
                    .inForce(one.subject().layout())
                    .map(limit -> beyond(one, row, limit, job))
                    .stream())
        .findFirst()
        .map(reading -> (Reading<?>) reading);
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // a limit and its readings are of one kind
  private static Reading<?> beyond(
      Observation one, LimitRow row, LimitInForce limit, BrakeJob job) {
    Quantity value = limit.value();
    Quantity beyond = limit.comparison().isUpper() ? value.plus(value) : value.minus(value);
    return new Reading(
        beyond,
        beyond.toString(),
        row.limit().station().orElse(one.place().station()),
        row.limit().methods().stream().findFirst().orElse(Method.CALIPER),
        Optional.empty(),
        TABLES.ruleSets().testPressure(job.ruleSet()).map(TestPressure::least),
        row.limit().moment().orElse(Moment.AS_FOUND));
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the readings of one measurement
  private static Object withOneMore(Observation one, Reading<?> reading) {
    List<Reading<?>> readings = new ArrayList<>(((Measurement<?>) one.value()).readings());
    readings.add(reading);
    return new Measurement(readings);
  }
}
