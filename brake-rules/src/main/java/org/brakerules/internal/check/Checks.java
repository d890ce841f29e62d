package org.brakerules.internal.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.calc.trust.Instrument;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Property;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.table.TestPressure;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.Part;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** Holds every reading of a part against the limits in force for it. */
public final class Checks {

  private final LimitTable table;
  private final LimitsOfJob limits;
  private final Optional<TestPressure> testPressure;
  private final Acceptance acceptance;

  /**
   * Checks against the limits of one job.
   *
   * @param testPressure the reservoir pressure its rule set asks for
   * @param acceptance how the uncertainty of a reading counts
   */
  public Checks(
      LimitTable table,
      LimitsOfJob limits,
      Optional<TestPressure> testPressure,
      Acceptance acceptance) {
    this.table = table;
    this.limits = limits;
    this.testPressure = testPressure;
    this.acceptance = acceptance;
  }

  /** Checks against the limits in force for a job. */
  public static Checks of(Tables tables, BrakeJob job) {
    return new Checks(
        tables.limits(),
        new LimitsOfJob(tables.limits(), job.date(), job.ruleSet(), job.makersLimits()),
        tables.ruleSets().testPressure(job.ruleSet()),
        job.acceptance());
  }

  /** Checks against the limits in force on a day under a rule set, before there is a job. */
  public static Checks before(Tables tables, LocalDate date, RuleSet ruleSet) {
    return new Checks(
        tables.limits(),
        new LimitsOfJob(tables.limits(), date, ruleSet, List.of()),
        tables.ruleSets().testPressure(ruleSet),
        Acceptance.GUARDED_IF_STATED);
  }

  /** Under which conditions a limit wants its reading taken, each as the end of a sentence. */
  public List<String> conditions(Limit limit) {
    List<String> conditions = new ArrayList<>();
    if (limit.moment().isPresent()) {
      conditions.add(
          limit.moment().get() == Moment.AS_FOUND
              ? "before anything is pumped, turned or taken apart"
              : "after the work");
    }
    pressure(limit).ifPresent(conditions::add);
    return conditions;
  }

  /** At which pressure a limit wants its reading taken; empty if at any. */
  public Optional<String> pressure(Limit limit) {
    return limit.methods().contains(Method.FULL_APPLICATION)
        ? testPressure.map(TestPressure::inWords)
        : Optional.empty();
  }

  /** The limits of an id that hold for a part, each with the row that says how it is read. */
  public List<AppliedLimit> inForce(String id, Subject subject) {
    return limits.inForce(id, subject);
  }

  /** Every limit of the part's kind, with how the part's readings stand against it. */
  public List<Check> of(Subject subject) {
    List<String> ids = table.idsFor(subject.part().partKind());
    if (ids.isEmpty()) {
      return List.of();
    }
    List<Check> all = new ArrayList<>(ids.size());
    for (String id : ids) {
      against(id, subject, all);
    }
    return isAnyOfAnotherRuleSet(all)
        ? all.stream().filter(check -> !isOfAnotherRuleSet(check, all)).toList()
        : all;
  }

  private boolean isAnyOfAnotherRuleSet(List<Check> all) {
    for (Check check : all) {
      if (isOfAnotherRuleSet(check, all)) {
        return true;
      }
    }
    return false;
  }

  /** Where one limit of a property is in force, one of another rule set is no question. */
  private boolean isOfAnotherRuleSet(Check check, List<Check> all) {
    if (check.status() != CheckStatus.NO_LIMIT || limits.isOfThisJob(check.limitId())) {
      return false;
    }
    for (Check other : all) {
      if (other.limit().isPresent() && other.property().equals(check.property())) {
        return true;
      }
    }
    return false;
  }

  /** What must be stated of a part before a limit can be chosen for it. */
  public List<String> unstated(String limitId, Subject subject) {
    return limits.unstated(limitId, subject);
  }

  /** Whether anything must be stated of a part before a limit can be chosen for it. */
  public boolean isUnstated(String limitId, Subject subject) {
    return limits.isUnstated(limitId, subject);
  }

  /** Where the limits of a measurement want it taken; empty if at the part's own station. */
  public Optional<Station> station(String property, Subject subject) {
    for (Limit limit : table.of(subject.part().partKind(), property)) {
      for (LimitRow row : limits.rows(limit.id(), subject)) {
        if (row.limit().station().isPresent()) {
          return row.limit().station();
        }
      }
    }
    return Optional.empty();
  }

  /** A maker's limit does not settle what a law leaves open, so both are held against the part. */
  private void against(String id, Subject subject, List<Check> checks) {
    List<AppliedLimit> inForce = limits.inForce(id, subject);
    for (AppliedLimit limit : inForce) {
      checks.add(check(limit, subject.part()));
    }
    if (inForce.isEmpty() || limits.isLawOpen(id, subject)) {
      checks.add(withoutLimit(id, subject.part()));
    }
  }

  /** What was measured is told all the same: nobody may take it for good, or for not measured. */
  private Check withoutLimit(String id, Part part) {
    Property property = table.rows(id).get(0).property();
    List<? extends Reading<?>> readings = ((Measurement<?>) property.valueOf(part)).readings();
    return new Check(
        part.place(),
        property.name(),
        id,
        CheckStatus.NO_LIMIT,
        Optional.empty(),
        readings.isEmpty() ? Optional.empty() : Optional.of(readings.get(0)),
        Optional.empty());
  }

  private Check check(AppliedLimit limit, Part part) {
    return check(limit, part, (Measurement<?>) limit.row().property().valueOf(part));
  }

  private <Q extends Quantity<Q>> Check check(
      AppliedLimit limit, Part part, Measurement<Q> measurement) {
    List<Reading<Q>> readings = trusted(measurement.readings());
    if (readings.isEmpty()) {
      return check(limit, part, CheckStatus.MISSING, Optional.empty(), Optional.empty());
    }
    List<Reading<Q>> accepted = new ArrayList<>(readings.size());
    for (Reading<Q> reading : readings) {
      if (accepts(limit.row().limit(), part, reading)) {
        accepted.add(reading);
      }
    }
    if (accepted.isEmpty()) {
      return check(
          limit, part, CheckStatus.WRONG_METHOD, Optional.of(readings.get(0)), Optional.empty());
    }
    return worst(limit, part, accepted);
  }

  private <Q extends Quantity<Q>> List<Reading<Q>> trusted(List<Reading<Q>> readings) {
    return acceptance == Acceptance.GUARDED_IF_STATED
        ? readings
        : readings.stream().map(this::trusted).toList();
  }

  /** The reading with the uncertainty that counts under the acceptance of the job. */
  private <Q extends Quantity<Q>> Reading<Q> trusted(Reading<Q> reading) {
    return switch (acceptance) {
      case SIMPLE -> reading.withoutUncertainty();
      case GUARDED_IF_STATED -> reading;
      case GUARDED ->
          reading.uncertainty().isPresent()
              ? reading
              : Instrument.of(reading.method())
                  .flatMap(instrument -> instrument.uncertaintyOf(reading.value()))
                  .map(reading::plusOrMinus)
                  .orElse(reading);
    };
  }

  private static <Q extends Quantity<Q>> Check worst(
      AppliedLimit limit, Part part, List<Reading<Q>> accepted) {
    Q value = sameKind(limit.limit());
    Reading<Q> worst = accepted.get(0);
    Judgement<Q> gravest = Judgement.of(worst, limit.limit().comparison(), value);
    for (Reading<Q> reading : accepted) {
      Judgement<Q> judgement = Judgement.of(reading, limit.limit().comparison(), value);
      if (judgement.graverThan(gravest)) {
        worst = reading;
        gravest = judgement;
      }
    }
    return check(limit, part, gravest.status(), Optional.of(worst), Optional.of(gravest.margin()));
  }

  private static Check check(
      AppliedLimit limit,
      Part part,
      CheckStatus status,
      Optional<Reading<?>> reading,
      Optional<Quantity<?>> margin) {
    return new Check(
        part.place(),
        limit.row().limit().property(),
        limit.limit().id(),
        status,
        Optional.of(limit.limit()),
        reading,
        margin);
  }

  private boolean accepts(Limit limit, Part part, Reading<?> reading) {
    Station wanted = limit.station().orElse(part.station());
    boolean rightPlace = wanted == Station.WHOLE_PART || reading.station() == wanted;
    List<Method> methods = limit.methods();
    return rightPlace
        && (methods.isEmpty() || methods.contains(reading.method()))
        && limit.moment().map(moment -> reading.moment() == moment).orElse(true)
        && isAtTestPressure(reading);
  }

  /** An applied stroke grows with the pressure, so it counts only at the pressure of its limit. */
  private boolean isAtTestPressure(Reading<?> reading) {
    return reading.method() != Method.FULL_APPLICATION
        || testPressure
            .map(wanted -> reading.reservoirPressure().map(wanted::covers).orElse(false))
            .orElse(true);
  }

  /** Tables and maker's limits are held to the property's kind of quantity when they are read. */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Q sameKind(LimitInForce limit) {
    return (Q) limit.value();
  }
}
