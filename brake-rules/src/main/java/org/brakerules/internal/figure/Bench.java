package org.brakerules.internal.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.brakerules.calc.Working;
import org.brakerules.calc.stroke.CamGeometry;
import org.brakerules.internal.decide.InspectedPart;
import org.brakerules.internal.table.TestPressure;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.EarlierLining;
import org.brakerules.model.job.Size;
import org.brakerules.model.job.StatedSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.SlackAdjuster;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/**
 * What lies on the bench of one wheel end.
 *
 * @param wheelEnd the wheel end
 * @param layout how its brake is built
 * @param parts its parts in path order
 * @param sizes the sizes stated for it
 * @param earlierLinings how thick linings were at an earlier inspection
 * @param testPressure the reservoir pressure at which applied strokes count
 */
record Bench(
    WheelEndPath wheelEnd,
    Layout layout,
    List<InspectedPart> parts,
    List<StatedSize> sizes,
    List<EarlierLining> earlierLinings,
    Optional<TestPressure> testPressure) {

  /** The parts of a type that are fitted. */
  <P extends Part> Stream<P> fitted(Class<P> type) {
    return parts.stream()
        .map(InspectedPart::part)
        .filter(part -> part.presence() == Presence.FITTED)
        .filter(type::isInstance)
        .map(type::cast);
  }

  /** The one part of a type, where a brake has but one. */
  <P extends Part> Optional<P> one(Class<P> type) {
    return fitted(type).findFirst();
  }

  /** The part of a type that sits at a station. */
  <P extends Part> Optional<P> at(Class<P> type, Station station) {
    return fitted(type).filter(part -> part.station() == station).findFirst();
  }

  /** The limit of an id that is in force for any part of the wheel end. */
  Optional<LimitInForce> limit(String id) {
    return limits(id).findFirst();
  }

  /** The strictest length that a reading may have at most, where several limits of an id hold. */
  Optional<Length> most(String id) {
    return limits(id).map(limit -> (Length) limit.value()).min(Comparator.naturalOrder());
  }

  /** The strictest length that a part's property must have at least. */
  Optional<Length> least(Part part, String property) {
    return checks()
        .filter(check -> check.part().equals(part.place()) && check.property().equals(property))
        .flatMap(check -> check.limit().stream())
        .filter(limit -> !limit.comparison().isUpper())
        .map(limit -> (Length) limit.value())
        .max(Comparator.naturalOrder());
  }

  private Stream<LimitInForce> limits(String id) {
    return checks()
        .filter(check -> check.limitId().equals(id))
        .flatMap(check -> check.limit().stream());
  }

  Stream<Check> checks() {
    return parts.stream().flatMap(part -> part.checks().stream());
  }

  /** A size of which a wheel end has but one, stated for it or for one of its parts. */
  Optional<Length> size(Size size) {
    return nearest(
        size,
        one -> one.covers(wheelEnd.toString()) || one.on().startsWith(wheelEnd.toString() + "/"));
  }

  /** A size stated for the part at a path, or for more than it. */
  Optional<Length> size(Size size, String path) {
    return nearest(size, one -> one.covers(path));
  }

  /** The same; empty if it is zero, which no lever and no wheel is. */
  Optional<Length> positive(Size size) {
    return size(size).filter(Bench::isPositive);
  }

  /** The effective length of the adjuster arm; empty if it was not measured or is zero. */
  Optional<Length> arm() {
    return one(SlackAdjuster.class)
        .flatMap(adjuster -> last(adjuster.armLength()))
        .filter(Bench::isPositive);
  }

  /** The lift radius of the cam: a common one if none is stated. */
  Length lift() {
    return positive(Size.CAM_LIFT_RADIUS).orElse(CamGeometry.COMMON_LIFT);
  }

  /** Tells a calculation that was given the lift radius under a name where it is a common one. */
  Working withLift(Working working, String name) {
    return positive(Size.CAM_LIFT_RADIUS).isPresent()
        ? working
        : working.assumed(name, CamGeometry.COMMON);
  }

  /** Whether an applied stroke at the test pressure is as long as the chamber lets it be. */
  boolean isAtEndOfTravel() {
    return layout
        .chamber()
        .ratedStroke()
        .flatMap(
            full ->
                one(Chamber.class)
                    .flatMap(chamber -> lastApplied(chamber))
                    .map(applied -> applied.compareTo(full) >= 0))
        .orElse(false);
  }

  private Optional<Length> lastApplied(Chamber chamber) {
    return chamber.appliedStroke().readings().stream()
        .filter(this::isApplied)
        .map(Reading::value)
        .reduce((first, second) -> second);
  }

  /** At a lower pressure the rod does not come out as far, so that the reserve would look long. */
  boolean isApplied(Reading<Length> reading) {
    return reading.method() == Method.FULL_APPLICATION
        && testPressure
            .map(wanted -> reading.reservoirPressure().map(wanted::covers).orElse(false))
            .orElse(true);
  }

  /** Half of what is known on a diameter, a half nanometre cut off. */
  static Length onRadius(Length onDiameter) {
    return new Length(onDiameter.nanometres() / 2, onDiameter.unit());
  }

  private static boolean isPositive(Length length) {
    return length.nanometres() > 0;
  }

  /** The one that names its parts most closely. */
  private Optional<Length> nearest(Size size, Predicate<StatedSize> isMeant) {
    return sizes.stream()
        .filter(one -> one.size() == size && isMeant.test(one))
        .max(Comparator.comparing(one -> one.on().length()))
        .map(StatedSize::value);
  }

  /** The reading that was taken last. */
  static <Q extends Quantity<Q>> Optional<Q> last(Measurement<Q> measurement) {
    List<Reading<Q>> readings = measurement.readings();
    return readings.isEmpty()
        ? Optional.empty()
        : Optional.of(readings.get(readings.size() - 1).value());
  }

  /** The reading that was taken last of those taken in one of these ways. */
  static <Q extends Quantity<Q>> Optional<Q> last(Measurement<Q> measurement, Method... ways) {
    List<Method> accepted = List.of(ways);
    return measurement.readings().stream()
        .filter(reading -> accepted.contains(reading.method()))
        .map(Reading::value)
        .reduce((first, second) -> second);
  }

  /** The reading that was taken last at a station. */
  static <Q extends Quantity<Q>> Optional<Q> lastAt(Measurement<Q> measurement, Station station) {
    return at(measurement, station).stream().reduce((first, second) -> second);
  }

  /** The readings of one station, in the order taken. */
  static <Q extends Quantity<Q>> List<Q> at(Measurement<Q> measurement, Station station) {
    return measurement.readings().stream()
        .filter(reading -> reading.station() == station)
        .map(Reading::value)
        .toList();
  }
}
