package org.brakerules.benchmark.oracle;

import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.part.Lining;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.jspecify.annotations.Nullable;

/**
 * Two readings of one wheel end that cannot both be right; the last of each kind counts. What one
 * part shows is asked of all at its place.
 */
final class Contradicting {

  private static final Station[] ELSEWHERE = {
    Station.CAM_END, Station.SHOE_CENTRE, Station.ANCHOR_END
  };

  private Contradicting() {}

  /** A full application that goes no farther than a pull by hand. */
  static boolean strokes(Bench bench, Facts part) {
    for (Facts one : part.end().parts(PartKind.CHAMBER)) {
      Chamber chamber = (Chamber) one.part();
      Reading<Length> applied = last(chamber.appliedStroke(), Method.FULL_APPLICATION);
      Reading<Length> free = last(chamber.freeStroke(), Method.PRIED_BY_HAND);
      if (applied != null
          && free != null
          && !one.missing()
          && applied.moment() == free.moment()
          && high(applied) <= low(free)) {
        return true;
      }
    }
    return false;
  }

  /** A journal that is wider than the bushing around it. */
  static boolean journal(Bench bench, Facts part) {
    Reading<Length> journal = null;
    for (Facts one : part.end().parts(PartKind.CAMSHAFT)) {
      Reading<Length> last = last(((Camshaft) one.part()).journalDiameter(), part.station());
      journal = one.missing() || last == null ? journal : last;
    }
    if (journal == null) {
      return false;
    }
    for (Facts one : part.end().parts(PartKind.CAMSHAFT_BUSHING)) {
      Reading<Length> bore = last(((CamshaftBushing) one.part()).bore());
      if (bore != null && !one.missing() && one.isAtPlaceOf(part) && low(journal) > high(bore)) {
        return true;
      }
    }
    return false;
  }

  /** A thinnest point that is thicker than the lining is elsewhere. */
  static boolean thinnest(Bench bench, Facts part) {
    for (Facts one : part.end().parts(PartKind.LINING)) {
      if (one.isAtPlaceOf(part) && !one.missing() && isThinnerElsewhere((Lining) one.part())) {
        return true;
      }
    }
    return false;
  }

  private static boolean isThinnerElsewhere(Lining lining) {
    Reading<Length> thinnest = last(lining.thickness(), Station.THINNEST_POINT);
    if (thinnest == null) {
      return false;
    }
    for (Station place : ELSEWHERE) {
      Reading<Length> other = last(lining.thickness(), place);
      if (other != null && low(thinnest) > high(other)) {
        return true;
      }
    }
    return false;
  }

  private static @Nullable Reading<Length> last(Measurement<Length> measurement) {
    int count = measurement.readings().size();
    return count == 0 ? null : measurement.readings().get(count - 1);
  }

  private static @Nullable Reading<Length> last(Measurement<Length> measurement, Station station) {
    Reading<Length> last = null;
    for (Reading<Length> reading : measurement.readings()) {
      last = reading.station() == station ? reading : last;
    }
    return last;
  }

  private static @Nullable Reading<Length> last(Measurement<Length> measurement, Method method) {
    Reading<Length> last = null;
    for (Reading<Length> reading : measurement.readings()) {
      last = reading.method() == method ? reading : last;
    }
    return last;
  }

  private static long high(Reading<Length> reading) {
    return reading.value().nanometres() + doubt(reading);
  }

  private static long low(Reading<Length> reading) {
    return reading.value().nanometres() - doubt(reading);
  }

  private static long doubt(Reading<Length> reading) {
    return reading.uncertainty().map(Length::nanometres).orElse(0L);
  }
}
