package org.brakerules.internal.check;

import java.util.List;
import java.util.Optional;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Property;
import org.brakerules.internal.table.Subject;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.part.Part;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** Holds every reading of a part against the limits in force for it. */
public final class Checks {

  private final LimitTable table;
  private final LimitsOfJob limits;

  /** Checks against the limits of one job. */
  public Checks(LimitTable table, LimitsOfJob limits) {
    this.table = table;
    this.limits = limits;
  }

  /** Every limit of the part's kind, with how the part's readings stand against it. */
  public List<Check> of(Subject subject) {
    return table.idsFor(subject.part().partKind()).stream()
        .flatMap(id -> against(id, subject).stream())
        .toList();
  }

  /** What must be stated of a part before a limit can be chosen for it. */
  public List<String> unstated(String limitId, Subject subject) {
    return limits.unstated(limitId, subject);
  }

  private List<Check> against(String id, Subject subject) {
    List<AppliedLimit> inForce = limits.inForce(id, subject);
    if (inForce.isEmpty()) {
      String property = table.first(id).map(Limit::property).orElseThrow();
      return List.of(
          new Check(
              subject.part().place(),
              property,
              id,
              CheckStatus.NO_LIMIT,
              Optional.empty(),
              Optional.empty(),
              Optional.empty()));
    }
    return inForce.stream().map(limit -> check(limit, subject.part())).toList();
  }

  private static Check check(AppliedLimit limit, Part part) {
    Measurement<?> measurement =
        (Measurement<?>)
            Property.of(part.partKind(), limit.row().property()).orElseThrow().valueOf(part);
    return check(limit, part, measurement);
  }

  private static <Q extends Quantity<Q>> Check check(
      AppliedLimit limit, Part part, Measurement<Q> measurement) {
    List<Reading<Q>> readings = measurement.readings();
    if (readings.isEmpty()) {
      return check(limit, part, CheckStatus.MISSING, Optional.empty(), Optional.empty());
    }
    List<Reading<Q>> accepted =
        readings.stream().filter(reading -> accepts(limit.row(), part, reading)).toList();
    if (accepted.isEmpty()) {
      return check(
          limit, part, CheckStatus.WRONG_METHOD, Optional.of(readings.get(0)), Optional.empty());
    }
    return worst(limit, part, accepted);
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
        limit.row().property(),
        limit.row().id(),
        status,
        Optional.of(limit.limit()),
        reading,
        margin);
  }

  private static boolean accepts(Limit limit, Part part, Reading<?> reading) {
    Station wanted = limit.station().orElse(part.station());
    boolean rightPlace = wanted == Station.WHOLE_PART || reading.station() == wanted;
    List<Method> methods = limit.methods();
    return rightPlace && (methods.isEmpty() || methods.contains(reading.method()));
  }

  /** Tables and maker's limits are held to the property's kind of quantity when they are read. */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Q sameKind(LimitInForce limit) {
    return (Q) limit.value();
  }
}
