package org.brakerules.internal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.calc.Working;
import org.brakerules.calc.play.ClevisPinFit;
import org.brakerules.calc.play.ClevisPinSize;
import org.brakerules.calc.play.OneSidedWear;
import org.brakerules.calc.play.PlayInFourDirections;
import org.brakerules.calc.play.PlayShare;
import org.brakerules.calc.play.RadialPlay;
import org.brakerules.figure.Figure;
import org.brakerules.model.job.Size;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.ClevisPin;
import org.brakerules.model.part.PinSize;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;

/** The play of the camshaft in its bushings, and the fit of the clevis pins. */
final class PlayFigures {

  private PlayFigures() {}

  static List<Figure> of(Bench bench) {
    List<Figure> figures = new ArrayList<>();
    bench.fitted(CamshaftBushing.class).forEach(bushing -> radial(bench, bushing, figures));
    bench.fitted(ClevisPin.class).forEach(pin -> fit(bench, pin).ifPresent(figures::add));
    return figures;
  }

  private static void radial(Bench bench, CamshaftBushing bushing, List<Figure> figures) {
    String about = bushing.place().toString();
    byDial(bushing).ifPresent(working -> figures.add(new Figure(about, working)));
    Optional<Length> bore = Bench.last(bushing.bore());
    Optional<Length> journal = journal(bench, bushing);
    if (bore.isPresent() && journal.isPresent() && journal.get().compareTo(bore.get()) <= 0) {
      figures.add(new Figure(about, RadialPlay.byDiameters(bore.get(), journal.get()).working()));
      figures.add(new Figure(about, share(bench, about, bore.get(), journal.get())));
    }
    if (bore.isPresent() && journal.isEmpty()) {
      figures.add(new Figure(about, RadialPlay.missing("diameter of the journal at this end")));
    }
    oneSided(bench, about).ifPresent(figures::add);
  }

  /** Pried, the bracket bends into the reading; worked out from diameters, there was no dial. */
  private static Optional<Working> byDial(CamshaftBushing bushing) {
    List<Reading<Length>> readings = bushing.radialPlay().readings();
    Optional<Working> play =
        Bench.last(bushing.radialPlay(), Method.DIAL_INDICATOR_LIFTED_BY_HAND)
            .map(movement -> RadialPlay.byDial(movement).working());
    boolean another =
        readings.stream().anyMatch(reading -> reading.method() != Method.BORE_LESS_JOURNAL);
    return play.isEmpty() && another
        ? Optional.of(RadialPlay.dialMissing("whole movement of a dial, the shaft lifted by hand"))
        : play;
  }

  private static Working share(Bench bench, String about, Length bore, Length journal) {
    Optional<Length> newBore = bench.size(Size.NEW_BUSHING_BORE, about);
    Optional<Length> newJournal = bench.size(Size.NEW_JOURNAL, about);
    return newBore.isPresent() && newJournal.isPresent()
        ? PlayShare.of(bore, journal, newBore.get(), newJournal.get()).working()
        : PlayShare.unknown(newBore, newJournal);
  }

  private static Optional<Figure> oneSided(Bench bench, String about) {
    Optional<Length> upAndDown = bench.size(Size.PLAY_UP_AND_DOWN, about);
    Optional<Length> upInFront = bench.size(Size.PLAY_UP_IN_FRONT, about);
    Optional<Length> frontToRear = bench.size(Size.PLAY_FRONT_TO_REAR, about);
    Optional<Length> downInFront = bench.size(Size.PLAY_DOWN_IN_FRONT, about);
    if (upAndDown.isEmpty()
        || upInFront.isEmpty()
        || frontToRear.isEmpty()
        || downInFront.isEmpty()) {
      return Optional.empty();
    }
    PlayInFourDirections plays =
        new PlayInFourDirections(
            upAndDown.get(), upInFront.get(), frontToRear.get(), downInFront.get());
    return Optional.of(new Figure(about, OneSidedWear.of(plays).working()));
  }

  private static Optional<Length> journal(Bench bench, CamshaftBushing bushing) {
    return bench
        .one(Camshaft.class)
        .flatMap(shaft -> Bench.lastAt(shaft.journalDiameter(), bushing.station()));
  }

  private static Optional<Figure> fit(Bench bench, ClevisPin pin) {
    String about = pin.place().toString();
    Optional<Length> diameter = Bench.last(pin.diameter());
    Optional<Length> hole =
        bench
            .size(Size.CLEVIS_PIN_HOLE, about)
            .filter(wide -> diameter.map(thick -> thick.compareTo(wide) <= 0).orElse(true));
    if (diameter.isEmpty() && hole.isEmpty()) {
      return Optional.empty();
    }
    Optional<Length> widestNew = bench.size(Size.WIDEST_NEW_CLEVIS_PIN_HOLE, about);
    return size(pin.size())
        .map(size -> ClevisPinFit.of(size, diameter, hole, widestNew).working())
        .map(working -> new Figure(about, working));
  }

  private static Optional<ClevisPinSize> size(PinSize size) {
    return switch (size) {
      case QUARTER_INCH -> Optional.of(ClevisPinSize.of(Length.parse("1/4 in")));
      case HALF_INCH -> Optional.of(ClevisPinSize.of(Length.parse("1/2 in")));
      case FIVE_EIGHTHS_INCH -> Optional.of(ClevisPinSize.of(Length.parse("5/8 in")));
      case UNKNOWN -> Optional.empty();
    };
  }
}
