package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import org.brakerules.calc.trust.Instrument;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Sign;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** What is still open of a part: the points its decision needs that nobody looked at yet. */
final class OpenPoints {

  private final List<Point> points;
  private final LimitTable limits;
  private final Checks checks;
  private final Scope scope;

  OpenPoints(List<Point> points, LimitTable limits, Checks checks, Scope scope) {
    this.points = points;
    this.limits = limits;
    this.checks = checks;
    this.scope = scope;
  }

  /** The open points of a part, those that rules ask for among them. */
  List<Needed> of(InspectedPart part, List<Finding> findings) {
    List<Needed> open = new ArrayList<>();
    Map<String, String> measureAgain = asking(Verdict.MEASURE_AGAIN, findings);
    Map<String, String> lookAt = asking(Verdict.LOOK_AT, findings);
    for (Point point : points) {
      Optional<String> again = Optional.ofNullable(measureAgain.get(point.id()));
      Optional<String> asked = Optional.ofNullable(lookAt.get(point.id()));
      if (again.isPresent()) {
        open.add(needed(part, point, "to be measured again, asked for by " + again.get()));
      } else if (asked.isPresent()) {
        whyOpen(part, point)
            .ifPresent(why -> open.add(needed(part, point, why + ", asked for by " + asked.get())));
      } else if (isNeeded(part, point)) {
        whyOpen(part, point).ifPresent(why -> open.add(needed(part, point, why)));
      }
    }
    return open;
  }

  /** Whether the decision needs the point, whatever the rules find. */
  boolean isNeeded(InspectedPart part, Point point) {
    return scope.reaches(point.from())
        && point.selector().fit(part.subject()) != Fit.NO
        && switch (point.demand()) {
          case ALWAYS -> true;
          case WITH_LIMIT -> mayHaveLimit(part, point);
          case ON_DEMAND -> false;
        };
  }

  Needed needed(InspectedPart part, Point point, String why) {
    return new Needed(
        part.part().place(),
        point.id(),
        point.task(),
        point.property().meaning(),
        why,
        point.instrument(),
        point.how(),
        station(part, point),
        methods(point),
        conditions(point),
        limitsInForce(part, point),
        point.from());
  }

  /** The points that rules ask for, each with the first rule that does. */
  private static Map<String, String> asking(Verdict verdict, List<Finding> findings) {
    return findings.stream()
        .filter(one -> one.verdict() == verdict)
        .collect(
            Collectors.toMap(
                Finding::point, one -> one.rule().id(), BinaryOperator.minBy(String::compareTo)));
  }

  private List<Method> methods(Point point) {
    return limits.of(point.part(), point.property().name()).stream()
        .flatMap(limit -> limit.methods().stream())
        .distinct()
        .sorted()
        .toList();
  }

  private List<String> conditions(Point point) {
    return limits.of(point.part(), point.property().name()).stream()
        .flatMap(limit -> checks.conditions(limit).stream())
        .distinct()
        .toList();
  }

  private Station station(InspectedPart part, Point point) {
    return point
        .at()
        .or(() -> checks.station(point.property().name(), part.subject()))
        .orElse(part.part().station());
  }

  /** Where the limit hangs on something that is not stated, asking for it is the safe side. */
  private boolean mayHaveLimit(InspectedPart part, Point point) {
    return part.checksOf(point.property().name()).stream()
        .anyMatch(
            check ->
                check.limit().isPresent()
                    || !checks.unstated(check.limitId(), part.subject()).isEmpty());
  }

  private static List<LimitInForce> limitsInForce(InspectedPart part, Point point) {
    return part.checksOf(point.property().name()).stream()
        .flatMap(check -> check.limit().stream())
        .distinct()
        .toList();
  }

  private Optional<String> whyOpen(InspectedPart part, Point point) {
    Object value = part.valueOf(point);
    if (value instanceof Measurement<?> measurement) {
      return whyOpen(part, point, measurement);
    }
    if (value == Sign.NOT_CHECKED) {
      return Optional.of("not looked at");
    }
    if (value instanceof Optional<?> stated) {
      return stated.isPresent() ? Optional.empty() : Optional.of("not stated");
    }
    return Names.of((Enum<?>) value).equals("unknown")
        ? Optional.of("not stated")
        : Optional.empty();
  }

  private Optional<String> whyOpen(InspectedPart part, Point point, Measurement<?> measurement) {
    List<Check> against = part.checksOf(point.property().name());
    if (against.isEmpty()) {
      return measurement.taken() ? Optional.empty() : Optional.of("not measured");
    }
    String whys =
        against.stream()
            .flatMap(check -> whyOpen(part, check).stream())
            .distinct()
            .collect(Collectors.joining("; "));
    return whys.isEmpty() ? Optional.empty() : Optional.of(whys);
  }

  private Optional<String> whyOpen(InspectedPart part, Check check) {
    return switch (check.status()) {
      case WITHIN, BEYOND -> Optional.empty();
      case MISSING -> Optional.of("not measured");
      case WRONG_METHOD -> Optional.of(whyNotAccepted(check));
      case UNPROVEN -> Optional.of(whyUnproven(check, check.reading().orElseThrow()));
      case NO_LIMIT -> Optional.of(whyNoLimit(part, check));
    };
  }

  private <Q extends Quantity<Q>> String whyUnproven(Check check, Reading<Q> reading) {
    return "measured as "
        + reading.written()
        + ", too close to the limit for its uncertainty"
        + reading.uncertainty().map(least -> " of " + least).orElse("")
        + "; measure again with a finer instrument"
        + settling(check, reading);
  }

  /** Margin and reading of a check are of one kind of quantity. */
  @SuppressWarnings("unchecked")
  private <Q extends Quantity<Q>> String settling(Check check, Reading<Q> reading) {
    List<Method> methods = limits.first(check.limitId()).map(Limit::methods).orElseGet(List::of);
    String names =
        Instrument.settling(reading.value(), (Q) check.margin().orElseThrow(), methods).stream()
            .map(Instrument::name)
            .collect(Collectors.joining(" or "));
    return names.isEmpty() ? "" : ", such as a " + names;
  }

  private String whyNotAccepted(Check check) {
    Reading<?> reading = check.reading().orElseThrow();
    return "measured as "
        + reading.written()
        + where(check, reading)
        + how(reading)
        + at(reading)
        + when(check, reading)
        + ", which is no reading of this limit";
  }

  /** The moment is named only where the limit asks for another. */
  private String when(Check check, Reading<?> reading) {
    return limits
        .first(check.limitId())
        .flatMap(Limit::moment)
        .filter(wanted -> wanted != reading.moment())
        .map(
            wanted ->
                reading.moment() == Moment.UNKNOWN
                    ? " at a moment not stated"
                    : " " + reading.moment().inWords())
        .orElse("");
  }

  /** The pressure is named only where the method needs one. */
  private static String at(Reading<?> reading) {
    if (reading.method() != Method.FULL_APPLICATION) {
      return "";
    }
    return reading
        .reservoirPressure()
        .map(pressure -> " at a reservoir pressure of " + pressure)
        .orElse(" at a reservoir pressure not stated");
  }

  /** The place is named only where the limit asks for one. */
  private String where(Check check, Reading<?> reading) {
    boolean placeCounts =
        check.part().station() != Station.WHOLE_PART
            || limits.first(check.limitId()).flatMap(Limit::station).isPresent();
    if (!placeCounts) {
      return "";
    }
    return reading.station() == Station.UNKNOWN
        ? " at a place not stated"
        : " at the " + reading.station().inWords();
  }

  private static String how(Reading<?> reading) {
    return switch (reading.method()) {
      case UNKNOWN -> " in a way not stated";
      case BY_EYE -> " by eye";
      default -> " by " + reading.method().inWords();
    };
  }

  private String whyNoLimit(InspectedPart part, Check check) {
    List<String> unstated = checks.unstated(check.limitId(), part.subject());
    return unstated.isEmpty()
        ? "no limit is known for this part; supply the maker's as " + check.limitId()
        : "the limit depends on " + String.join(" and ", unstated) + ", which is not stated";
  }
}
