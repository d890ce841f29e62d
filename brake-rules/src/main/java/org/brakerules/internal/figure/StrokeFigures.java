package org.brakerules.internal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.calc.Working;
import org.brakerules.calc.stroke.PowerStroke;
import org.brakerules.calc.stroke.StrokeReserve;
import org.brakerules.figure.Figure;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;

/** The power stroke and the reserve of stroke, as found and after the work. */
final class StrokeFigures {

  private StrokeFigures() {}

  static List<Figure> of(Bench bench) {
    List<Figure> figures = new ArrayList<>();
    bench.one(Chamber.class).ifPresent(chamber -> strokes(bench, chamber, figures));
    return figures;
  }

  /** Strokes of one moment belong together: turning the adjuster changes both. */
  private static void strokes(Bench bench, Chamber chamber, List<Figure> figures) {
    String about = chamber.place().toString();
    for (Moment moment : Moment.values()) {
      Optional<Length> applied = at(chamber.appliedStroke(), Method.FULL_APPLICATION, moment);
      Optional<Length> free = at(chamber.freeStroke(), Method.PRIED_BY_HAND, moment);
      if (applied.isPresent()) {
        figures.add(new Figure(about, power(applied.get(), free)));
        figures.add(new Figure(about, reserve(bench.layout().chamber(), applied.get())));
      }
    }
  }

  private static Working reserve(ChamberSize chamber, Length applied) {
    return chamber
        .ratedStroke()
        .map(full -> StrokeReserve.of(full, applied).working())
        .orElseGet(() -> StrokeReserve.missing("rated stroke of the chamber"));
  }

  private static Working power(Length applied, Optional<Length> free) {
    return free.map(length -> power(applied, length))
        .orElseGet(() -> PowerStroke.missing("free stroke of the same moment"));
  }

  private static Working power(Length applied, Length free) {
    return applied.compareTo(free) > 0
        ? PowerStroke.of(applied, free).working()
        : PowerStroke.unusable(applied, free);
  }

  private static Optional<Length> at(Measurement<Length> strokes, Method method, Moment moment) {
    return strokes.readings().stream()
        .filter(reading -> reading.method() == method && reading.moment() == moment)
        .map(Reading::value)
        .reduce((first, second) -> second);
  }
}
