package org.brakerules.internal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.calc.Working;
import org.brakerules.calc.play.ClevisPinFit;
import org.brakerules.calc.play.ClevisPinSize;
import org.brakerules.calc.play.OneSidedWear;
import org.brakerules.calc.play.PlayInFourDirections;
import org.brakerules.calc.play.PlayShare;
import org.brakerules.calc.play.RadialPlay;
import org.brakerules.calc.stroke.DeadBand;
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
    bench
        .size(Size.PLAY_OF_SMALL_PIN)
        .map(play -> new Figure(bench.wheelEnd().toString(), DeadBand.of(play).working()))
        .ifPresent(figures::add);
    return figures;
  }

  private static void radial(Bench bench, CamshaftBushing bushing, List<Figure> figures) {
    String about = bushing.place().toString();
    byDial(bushing).ifPresent(working -> figures.add(new Figure(about, working)));
    Optional<Length> bore = Bench.last(bushing.bore());
    Optional<Length> journal = journal(bench, bushing);
    if (bore.isPresent() || journal.isPresent()) {
      byDiameters(bench, about, bore, journal, figures);
    }
    oneSided(bench, about).ifPresent(figures::add);
  }

  private static void byDiameters(
      Bench bench,
      String about,
      Optional<Length> bore,
      Optional<Length> journal,
      List<Figure> figures) {
    if (bore.isEmpty() || journal.isEmpty()) {
      String what = bore.isEmpty() ? "bore of the bushing" : "diameter of the journal at this end";
      figures.add(new Figure(about, RadialPlay.missing(what)));
    } else if (journal.get().compareTo(bore.get()) > 0) {
      Working working = RadialPlay.contradicted(bore.get(), journal.get());
      figures.add(new Figure(about, working));
    } else {
      figures.add(new Figure(about, RadialPlay.byDiameters(bore.get(), journal.get()).working()));
      figures.add(new Figure(about, share(bench, about, bore.get(), journal.get())));
    }
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
    List<Optional<Length>> plays =
        Stream.of(
                Size.PLAY_UP_AND_DOWN,
                Size.PLAY_UP_IN_FRONT,
                Size.PLAY_FRONT_TO_REAR,
                Size.PLAY_DOWN_IN_FRONT)
            .map(size -> bench.size(size, about))
            .toList();
    if (plays.stream().allMatch(Optional::isEmpty)) {
      return Optional.empty();
    }
    List<Length> known = plays.stream().flatMap(Optional::stream).toList();
    return Optional.of(
        new Figure(
            about,
            known.size() < plays.size()
                ? OneSidedWear.missing("play in each of the four directions")
                : OneSidedWear.of(
                        new PlayInFourDirections(
                            known.get(0), known.get(1), known.get(2), known.get(3)))
                    .working()));
  }

  private static Optional<Length> journal(Bench bench, CamshaftBushing bushing) {
    return bench
        .one(Camshaft.class)
        .flatMap(shaft -> Bench.lastAt(shaft.journalDiameter(), bushing.station()));
  }

  private static Optional<Figure> fit(Bench bench, ClevisPin pin) {
    String about = pin.place().toString();
    Optional<Length> diameter = Bench.last(pin.diameter());
    Optional<Length> hole = bench.size(Size.CLEVIS_PIN_HOLE, about);
    if (diameter.isEmpty() && hole.isEmpty()) {
      return Optional.empty();
    }
    Optional<Length> widestNew = bench.size(Size.WIDEST_NEW_CLEVIS_PIN_HOLE, about);
    return Optional.of(new Figure(about, fit(size(pin.size()), diameter, hole, widestNew)));
  }

  private static Working fit(
      Optional<ClevisPinSize> size,
      Optional<Length> diameter,
      Optional<Length> hole,
      Optional<Length> widestNew) {
    if (size.isEmpty()) {
      return ClevisPinFit.missing("nominal size of the pin");
    }
    if (diameter.isPresent() && hole.isPresent() && diameter.get().compareTo(hole.get()) > 0) {
      return ClevisPinFit.contradicted(diameter.get(), hole.get());
    }
    return ClevisPinFit.of(size.get(), diameter, hole, widestNew).working();
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
