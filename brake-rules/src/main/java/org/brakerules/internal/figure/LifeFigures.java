package org.brakerules.internal.figure;

import java.util.List;
import java.util.Optional;
import org.brakerules.calc.Working;
import org.brakerules.calc.trust.Instrument;
import org.brakerules.calc.wear.LiningLife;
import org.brakerules.calc.wear.LiningLife.WearPoint;
import org.brakerules.figure.Figure;
import org.brakerules.model.job.EarlierLining;
import org.brakerules.model.part.Lining;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** How far each lining may still run, from what it lost since an earlier inspection. */
final class LifeFigures {

  private LifeFigures() {}

  static List<Figure> of(Bench bench) {
    return bench.fitted(Lining.class).flatMap(lining -> life(bench, lining).stream()).toList();
  }

  private static Optional<Figure> life(Bench bench, Lining lining) {
    String path = lining.place().toString();
    return bench.earlierLinings().stream()
        .filter(earlier -> earlier.on().equals(path))
        .findFirst()
        .map(earlier -> new Figure(path, life(bench, lining, earlier)));
  }

  private static Working life(Bench bench, Lining lining, EarlierLining earlier) {
    Optional<Reading<Length>> now =
        lining.thickness().readings().stream()
            .filter(reading -> reading.station() == Station.THINNEST_POINT)
            .reduce((first, second) -> second);
    Optional<Length> limit = bench.least(lining, "thickness");
    if (now.isEmpty()) {
      return LiningLife.missing("thickness at the thinnest point");
    }
    if (limit.isEmpty()) {
      return LiningLife.missing("limit of the thickness");
    }
    if (now.get().value().compareTo(earlier.thickness()) >= 0) {
      return LiningLife.contradicted(earlier.thickness(), now.get().value());
    }
    return life(earlier, now.get(), limit.get());
  }

  private static Working life(EarlierLining earlier, Reading<Length> now, Length limit) {
    Optional<Length> uncertainty =
        now.uncertainty()
            .or(
                () ->
                    Instrument.of(now.method())
                        .flatMap(instrument -> instrument.uncertaintyOf(now.value())));
    if (uncertainty.isEmpty()) {
      return LiningLife.missing("uncertainty of the readings, or the instrument");
    }
    Working working =
        LiningLife.of(
                new WearPoint(earlier.thickness(), earlier.odometer().distance()),
                new WearPoint(now.value(), earlier.odometerNow().distance()),
                limit,
                uncertainty.get(),
                earlier.odometer().unit())
            .working()
            .titled(", since " + earlier.date());
    return now.uncertainty().isPresent()
        ? working
        : working.assumed("uncertainty of each", "that of the instrument's table");
  }
}
