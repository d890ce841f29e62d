package org.brakerules.benchmark.oracle;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.benchmark.oracle.Point.When;
import org.brakerules.model.part.Sign;

/** Nothing is good that was not looked at. */
final class Looks {

  private final Bench bench;
  private final WheelEndView end;
  private final Facts part;
  private final Findings findings;

  Looks(Bench bench, WheelEndView end, Facts part, Findings findings) {
    this.bench = bench;
    this.end = end;
    this.part = part;
    this.findings = findings;
  }

  /** Whether something that the decision needs is not known. */
  boolean isSomethingOpen() {
    return !bench.job().scope().reaches(part.kind().laidOpenFrom())
        || Trade.points(part.kind()).stream().anyMatch(this::isOpen)
        || findings.asked().stream().anyMatch(this::isUnknown);
  }

  /** Whether something was found that no sentence speaks of. */
  boolean isSomethingUnanswered() {
    return part.signs(Sign.SEEN).stream().anyMatch(this::isUnansweredSign)
        || Measure.limitsOf(part).stream()
            .filter(limit -> !findings.isAnswered(limit))
            .anyMatch(limit -> bench.isBeyond(limit, end, part));
  }

  private boolean isUnansweredSign(String sign) {
    return !Trade.isGood(sign) && !findings.isAnswered(sign);
  }

  private boolean isOpen(Point point) {
    if (point.when() == When.ON_DEMAND
        || !bench.job().scope().reaches(point.from())
        || point.which().fit(end, part) == Fit.NO) {
      return false;
    }
    return point.when() == When.WITH_LIMIT
        ? limits(point.property()).anyMatch(limit -> bench.measure().isOpen(limit, end, part))
        : isUnknown(point.property());
  }

  private boolean isUnknown(String property) {
    if (property.contains(".")) {
      String state = end.state(property);
      return state.isEmpty() || state.equals("unknown");
    }
    return part.measurement(property)
        .map(measurement -> isUnproven(property) || !measurement.taken())
        .orElseGet(() -> List.of("unknown", "not-checked").contains(part.state(property)));
  }

  /**
   * Of a property that has limits each must be known, and the readings inside it or beyond. Where
   * only other places have a limit, nobody knows what a reading is worth here.
   */
  private boolean isUnproven(String property) {
    boolean onlyElsewhere =
        !Measure.limits(part, property).isEmpty() && limits(property).findAny().isEmpty();
    return onlyElsewhere
        || limits(property).anyMatch(limit -> !bench.measure().isSettled(limit, end, part));
  }

  private Stream<String> limits(String property) {
    return Measure.limits(part, property).stream()
        .filter(limit -> bench.measure().isInForce(limit, part));
  }
}
