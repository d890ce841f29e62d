package org.brakerules.internal.decide;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.brakerules.internal.fact.ReadingsContradict;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.part.Lining;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Presence;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Contradiction;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** The readings of a wheel end that cannot both be right, of those taken last. */
final class Contradictions {

  private static final List<Station> OTHER_PLACES =
      List.of(Station.CAM_END, Station.SHOE_CENTRE, Station.ANCHOR_END);

  private Contradictions() {}

  static List<ReadingsContradict> of(WheelEnd end) {
    return Stream.of(
            fitted(end, Chamber.class).flatMap(chamber -> strokes(chamber).stream()),
            fitted(end, CamshaftBushing.class).flatMap(bushing -> journal(end, bushing).stream()),
            fitted(end, Lining.class).flatMap(lining -> thinnest(lining).stream()))
        .flatMap(found -> found)
        .toList();
  }

  /** Turning the adjuster changes both strokes, so that only those of one moment can contradict. */
  private static Optional<ReadingsContradict> strokes(Chamber chamber) {
    Optional<Reading<Length>> applied =
        last(chamber.appliedStroke().readings().stream().filter(by(Method.FULL_APPLICATION)));
    Optional<Reading<Length>> free =
        last(chamber.freeStroke().readings().stream().filter(by(Method.PRIED_BY_HAND)));
    return applied.flatMap(
        one ->
            free.filter(other -> other.moment() == one.moment())
                .filter(other -> most(one) <= least(other))
                .map(other -> fact(Contradiction.STROKES, chamber, one, other)));
  }

  private static Optional<ReadingsContradict> journal(WheelEnd end, CamshaftBushing bushing) {
    Optional<Reading<Length>> bore = last(bushing.bore().readings().stream());
    Optional<Reading<Length>> journal =
        last(
            fitted(end, Camshaft.class)
                .flatMap(shaft -> at(shaft.journalDiameter(), bushing.station())));
    return journal.flatMap(
        one ->
            bore.filter(other -> least(one) > most(other))
                .map(other -> fact(Contradiction.JOURNAL_IN_BORE, bushing, one, other)));
  }

  private static Optional<ReadingsContradict> thinnest(Lining lining) {
    Optional<Reading<Length>> thinnest = last(at(lining.thickness(), Station.THINNEST_POINT));
    return thinnest.flatMap(
        one ->
            elsewhere(lining)
                .filter(other -> least(one) > most(other))
                .min(Comparator.comparing(Contradictions::most))
                .map(other -> fact(Contradiction.THINNEST_POINT, lining, one, other)));
  }

  private static Stream<Reading<Length>> elsewhere(Lining lining) {
    return OTHER_PLACES.stream().flatMap(place -> last(at(lining.thickness(), place)).stream());
  }

  private static ReadingsContradict fact(
      Contradiction contradiction, Part part, Reading<Length> one, Reading<Length> other) {
    return new ReadingsContradict(contradiction, part.place(), one.written(), other.written());
  }

  private static <P extends Part> Stream<P> fitted(WheelEnd end, Class<P> type) {
    return end.parts().stream()
        .filter(type::isInstance)
        .map(type::cast)
        .filter(part -> part.presence() == Presence.FITTED);
  }

  private static Stream<Reading<Length>> at(Measurement<Length> measurement, Station station) {
    return measurement.readings().stream().filter(reading -> reading.station() == station);
  }

  private static Predicate<Reading<Length>> by(Method method) {
    return reading -> reading.method() == method;
  }

  private static Optional<Reading<Length>> last(Stream<Reading<Length>> readings) {
    return readings.reduce((first, second) -> second);
  }

  /** The most that a reading can mean, in nanometres. */
  private static long most(Reading<Length> reading) {
    return reading.value().nanometres() + uncertainty(reading);
  }

  /** The least that a reading can mean, in nanometres. */
  private static long least(Reading<Length> reading) {
    return reading.value().nanometres() - uncertainty(reading);
  }

  private static long uncertainty(Reading<Length> reading) {
    return reading.uncertainty().map(Length::nanometres).orElse(0L);
  }
}
