package org.brakerules.benchmark.oracle;

import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** Two readings of one wheel end that cannot both be right; the last of each kind counts. */
final class Contradicting {

  private Contradicting() {}

  /** A full application that goes no farther than a pull by hand. */
  static boolean strokes(Bench bench, WheelEndView end, Facts part) {
    return fitted(end, part)
        .anyMatch(
            chamber -> {
              Optional<Reading<?>> applied =
                  last(chamber, "appliedStroke", one -> one.method() == Method.FULL_APPLICATION);
              Optional<Reading<?>> free =
                  last(chamber, "freeStroke", one -> one.method() == Method.PRIED_BY_HAND);
              return applied.isPresent()
                  && free.isPresent()
                  && applied.get().moment() == free.get().moment()
                  && high(applied.get()) <= low(free.get());
            });
  }

  /** A journal that is wider than the bushing around it. */
  static boolean journal(Bench bench, WheelEndView end, Facts part) {
    Optional<Reading<?>> journal =
        end.parts(PartKind.CAMSHAFT).stream()
            .filter(shaft -> !shaft.missing())
            .flatMap(shaft -> readings(shaft, "journalDiameter", at(part.place().station())))
            .reduce((earlier, later) -> later);
    return journal.isPresent()
        && fitted(end, part)
            .flatMap(bushing -> last(bushing, "bore", one -> true).stream())
            .anyMatch(bore -> low(journal.get()) > high(bore));
  }

  /** A thinnest point that is thicker than the lining is elsewhere. */
  static boolean thinnest(Bench bench, WheelEndView end, Facts part) {
    return fitted(end, part)
        .anyMatch(
            lining ->
                last(lining, "thickness", at(Station.THINNEST_POINT)).stream()
                    .anyMatch(
                        thin ->
                            Stream.of(Station.CAM_END, Station.SHOE_CENTRE, Station.ANCHOR_END)
                                .flatMap(place -> last(lining, "thickness", at(place)).stream())
                                .anyMatch(other -> low(thin) > high(other))));
  }

  private static Stream<Facts> fitted(WheelEndView end, Facts part) {
    return end.samePlace(part).filter(one -> !one.missing());
  }

  private static Predicate<Reading<?>> at(Station station) {
    return reading -> reading.station() == station;
  }

  private static Optional<Reading<?>> last(
      Facts part, String property, Predicate<Reading<?>> counts) {
    return readings(part, property, counts).reduce((earlier, later) -> later);
  }

  private static Stream<Reading<?>> readings(
      Facts part, String property, Predicate<Reading<?>> counts) {
    return part.measurement(property).stream()
        .<Reading<?>>flatMap(measurement -> measurement.readings().stream())
        .filter(counts);
  }

  private static long high(Reading<?> reading) {
    return nanometres(reading.value())
        + reading.uncertainty().map(Contradicting::nanometres).orElse(0L);
  }

  private static long low(Reading<?> reading) {
    return nanometres(reading.value())
        - reading.uncertainty().map(Contradicting::nanometres).orElse(0L);
  }

  private static long nanometres(Quantity<?> quantity) {
    return ((Length) quantity).nanometres();
  }
}
