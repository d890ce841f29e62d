package org.brakerules.internal.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.brakerules.calc.Working;
import org.brakerules.calc.stroke.PowerStroke;
import org.brakerules.calc.stroke.StrokeReserve;
import org.brakerules.calc.stroke.StrokeWhileBraking;
import org.brakerules.figure.Figure;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;

/** The power stroke, the reserve of stroke and the stroke while braking, moment by moment. */
final class StrokeFigures {

  private static final Length NOTHING = new Length(0, LengthUnit.INCH);
  private static final BigDecimal SECONDS = BigDecimal.TEN;

  private final Bench bench;
  private final Chamber chamber;
  private final List<Figure> figures = new ArrayList<>();

  private StrokeFigures(Bench bench, Chamber chamber) {
    this.bench = bench;
    this.chamber = chamber;
  }

  static List<Figure> of(Bench bench) {
    return bench
        .one(Chamber.class)
        .map(chamber -> new StrokeFigures(bench, chamber).strokes())
        .orElseGet(List::of);
  }

  /** Strokes of one moment belong together: turning the adjuster changes both. */
  private List<Figure> strokes() {
    for (Moment moment : Moment.values()) {
      Optional<Length> applied = at(chamber.appliedStroke(), bench::isApplied, moment);
      Optional<Length> free = at(chamber.freeStroke(), StrokeFigures::isPried, moment);
      if (applied.isPresent()) {
        figure(moment, power(applied.get(), free));
        if (free.filter(length -> length.compareTo(applied.get()) >= 0).isEmpty()) {
          reserve(moment, applied.get());
        }
      } else if (free.isPresent() || isTaken(moment)) {
        figure(moment, withoutApplied(free));
      }
    }
    return figures;
  }

  private void figure(Moment moment, Working working) {
    String when = moment == Moment.UNKNOWN ? "" : ", " + moment.inWords();
    figures.add(new Figure(chamber.place().toString(), working.titled(when)));
  }

  private void reserve(Moment moment, Length applied) {
    Optional<Length> full = bench.layout().chamber().ratedStroke();
    if (full.isEmpty()) {
      figure(moment, StrokeReserve.missing("rated stroke of the chamber"));
    } else if (applied.compareTo(full.get()) > 0) {
      figure(moment, StrokeReserve.contradicted(full.get(), applied));
    } else {
      figure(moment, StrokeReserve.of(full.get(), applied).working());
      figure(moment, whileBraking(applied, full.get()));
    }
  }

  private static Working whileBraking(Length applied, Length full) {
    StrokeWhileBraking braking = StrokeWhileBraking.of(applied, NOTHING, SECONDS);
    Working working =
        braking
            .working()
            .assumed("heat growth", "the drum cold when braking begins")
            .assumed("time", "one long stop");
    return braking.stroke().value().compareTo(full) < 0
        ? working
        : working.result(
            "the full stroke is " + full,
            "the push rod reaches the end of its travel, with no force left");
  }

  private static Working power(Length applied, Optional<Length> free) {
    return free.map(length -> power(applied, length))
        .orElseGet(
            () ->
                PowerStroke.missing("free stroke of the same moment")
                    .given("applied stroke", applied));
  }

  private static Working power(Length applied, Length free) {
    return applied.compareTo(free) > 0
        ? PowerStroke.of(applied, free).working()
        : PowerStroke.contradicted(applied, free);
  }

  private Working withoutApplied(Optional<Length> free) {
    String pressure =
        bench.testPressure().map(wanted -> ", fully applied " + wanted.inWords()).orElse("");
    Working working = PowerStroke.missing("applied stroke of the same moment" + pressure);
    return free.isPresent() ? working.given("free stroke", free.get()) : working;
  }

  private boolean isTaken(Moment moment) {
    return chamber.appliedStroke().readings().stream()
        .anyMatch(reading -> reading.moment() == moment);
  }

  private static boolean isPried(Reading<Length> reading) {
    return reading.method() == Method.PRIED_BY_HAND;
  }

  private static Optional<Length> at(
      Measurement<Length> strokes, Predicate<Reading<Length>> counts, Moment moment) {
    return strokes.readings().stream()
        .filter(reading -> reading.moment() == moment)
        .filter(counts)
        .map(Reading::value)
        .reduce((first, second) -> second);
  }
}
