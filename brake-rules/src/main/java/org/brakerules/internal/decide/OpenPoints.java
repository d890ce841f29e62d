package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import org.brakerules.calc.trust.Instrument;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Point.Finds;
import org.brakerules.internal.table.Property;
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

  private static final Optional<String> NOT_MEASURED = Optional.of("not measured");
  private static final Optional<String> NOT_LOOKED_AT = Optional.of("not looked at");
  private static final Optional<String> NOT_STATED = Optional.of("not stated");

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
  List<Needed> of(InspectedPart part, List<Said> said) {
    List<Needed> open = new ArrayList<>();
    Map<String, String> measureAgain = asking(Verdict.MEASURE_AGAIN, said);
    Map<String, String> lookAt = asking(Verdict.LOOK_AT, said);
    for (Point point : points) {
      String again = measureAgain.getOrDefault(point.id(), "");
      String asked = lookAt.getOrDefault(point.id(), "");
      if (!again.isEmpty()) {
        open.add(needed(part, point, "to be measured again, asked for by " + again));
      } else if (!asked.isEmpty() || isNeeded(part, point)) {
        Optional<String> why = whyOpen(part, point);
        if (why.isPresent()) {
          String by = asked.isEmpty() ? "" : ", asked for by " + asked;
          open.add(needed(part, point, why.get() + by));
        }
      }
    }
    return open;
  }

  /** Whether the decision needs any point, whatever the rules find. */
  boolean areAnyNeeded(InspectedPart part) {
    for (Point point : points) {
      if (isNeeded(part, point)) {
        return true;
      }
    }
    return false;
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

  /** Whether a sign that is seen is good, such as a roller that turns after cleaning. */
  boolean isGoodNews(Property sign) {
    for (Point point : points) {
      if (point.ofPart() && point.finds() == Finds.GOOD && isOf(point, sign)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOf(Point point, Property sign) {
    return point.property().name().equals(sign.name());
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
        limits.methods(point.part(), point.property().name()),
        conditions(point),
        limitsInForce(part, point),
        point.from());
  }

  /** The points that rules ask for, each with the first rule that does. */
  private static Map<String, String> asking(Verdict verdict, List<Said> said) {
    Map<String, String> asking = Map.of();
    for (Said one : said) {
      Finding finding = one.finding();
      if (finding.verdict() == verdict) {
        asking = asking.isEmpty() ? new HashMap<>() : asking;
        asking.merge(finding.point(), finding.rule().id(), BinaryOperator.minBy(String::compareTo));
      }
    }
    return asking;
  }

  private List<String> conditions(Point point) {
    List<Limit> ofReading = limits.of(point.part(), point.property().name());
    if (ofReading.isEmpty()) {
      return List.of();
    }
    Set<String> conditions = new LinkedHashSet<>();
    ofReading.forEach(limit -> conditions.addAll(checks.conditions(limit)));
    return List.copyOf(conditions);
  }

  private Station station(InspectedPart part, Point point) {
    return point
        .at()
        .or(() -> checks.station(point.property().name(), part.subject()))
        .orElse(part.part().station());
  }

  /** Where the limit hangs on something that is not stated, asking for it is the safe side. */
  private boolean mayHaveLimit(InspectedPart part, Point point) {
    for (Check check : part.checksOf(point.property().name())) {
      if (check.limit().isPresent() || checks.isUnstated(check.limitId(), part.subject())) {
        return true;
      }
    }
    return false;
  }

  private static List<LimitInForce> limitsInForce(InspectedPart part, Point point) {
    List<LimitInForce> inForce = List.of();
    for (Check check : part.checksOf(point.property().name())) {
      if (check.limit().isPresent() && !inForce.contains(check.limit().get())) {
        inForce = inForce.isEmpty() ? new ArrayList<>() : inForce;
        inForce.add(check.limit().get());
      }
    }
    return inForce;
  }

  private Optional<String> whyOpen(InspectedPart part, Point point) {
    Object value = part.valueOf(point);
    if (value instanceof Measurement<?> measurement) {
      return whyOpen(part, point, measurement);
    }
    if (value == Sign.NOT_CHECKED) {
      return NOT_LOOKED_AT;
    }
    if (value instanceof Optional<?> stated) {
      return stated.isPresent() ? Optional.empty() : NOT_STATED;
    }
    return Names.stated((Enum<?>) value).isPresent() ? Optional.empty() : NOT_STATED;
  }

  private Optional<String> whyOpen(InspectedPart part, Point point, Measurement<?> measurement) {
    List<Check> against = part.checksOf(point.property().name());
    if (against.isEmpty()) {
      return measurement.taken() ? Optional.empty() : NOT_MEASURED;
    }
    Set<String> whys = new LinkedHashSet<>();
    for (Check check : against) {
      whyOpen(part, check).ifPresent(whys::add);
    }
    return whys.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", whys));
  }

  private Optional<String> whyOpen(InspectedPart part, Check check) {
    return switch (check.status()) {
      case WITHIN, BEYOND -> Optional.empty();
      case MISSING -> NOT_MEASURED;
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
