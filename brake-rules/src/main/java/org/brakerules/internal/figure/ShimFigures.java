package org.brakerules.internal.figure;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.calc.Working;
import org.brakerules.calc.shim.EndPlayBand;
import org.brakerules.calc.shim.EndPlayShims;
import org.brakerules.calc.shim.ShimChoice;
import org.brakerules.calc.shim.ShimPiece;
import org.brakerules.calc.shim.ShimPlan;
import org.brakerules.figure.Figure;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Shim;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.reading.Station;

/** Which shims at hand bring the end play of the camshaft inside its band. */
final class ShimFigures {

  private static final String LEAST = "camshaft.end-play.min";
  private static final String MOST = "camshaft.end-play.max";

  private static final Length NOTHING = new Length(0, LengthUnit.INCH);

  private final Bench bench;
  private final ShimStock stock;
  private final Set<Place> replaced;
  private final Set<Place> good;

  /**
   * Knows the stock and the parts that go.
   *
   * @param stock the shims that may go in
   * @param replaced the parts that are decided to be replaced
   * @param good the parts that go back, cleaned or as they are
   */
  ShimFigures(Bench bench, ShimStock stock, Set<Place> replaced, Set<Place> good) {
    this.bench = bench;
    this.stock = stock;
    this.replaced = replaced;
    this.good = good;
  }

  /** One stack at a time: that at the spline end, where the end play is set, before the other. */
  List<Figure> figures() {
    return bench
        .one(Camshaft.class)
        .map(shaft -> Bench.lastAt(shaft.endPlay(), Station.SPLINE_END))
        .map(endPlay -> endPlay.map(this::figures).orElseGet(this::withoutEndPlay))
        .orElseGet(List::of);
  }

  /** Who has no shims at hand asks for none. */
  private List<Figure> withoutEndPlay() {
    return stock.isEmpty()
        ? List.of()
        : List.of(figure(Station.SPLINE_END, EndPlayShims.missing("end play at the spline end")));
  }

  private List<Figure> figures(Length endPlay) {
    Optional<EndPlayBand> band = band();
    Optional<String> unsettled = unsettled();
    if (band.isEmpty()) {
      return List.of(figure(Station.SPLINE_END, withoutBand(endPlay)));
    }
    if (unsettled.isPresent()) {
      return List.of(figure(Station.SPLINE_END, missing(endPlay, unsettled.get())));
    }
    return Stream.of(Station.SPLINE_END, Station.HEAD_END)
        .filter(station -> station == Station.SPLINE_END || !shims(station).isEmpty())
        .map(station -> figure(station, work(endPlay, band.get(), station)))
        .toList();
  }

  /** Shims are not chosen by a reading that no limit accepts, or that is too close to tell. */
  private Optional<String> unsettled() {
    List<CheckStatus> statuses =
        bench
            .checks()
            .filter(check -> check.limitId().equals(LEAST) || check.limitId().equals(MOST))
            .map(Check::status)
            .toList();
    if (statuses.contains(CheckStatus.WRONG_METHOD)) {
      return Optional.of("end play by a dial indicator at the spline end");
    }
    return statuses.contains(CheckStatus.UNPROVEN)
        ? Optional.of("end play with a finer instrument: it is too close to its limit to tell")
        : Optional.empty();
  }

  private Working withoutBand(Length endPlay) {
    Optional<Length> least = limit(LEAST);
    Optional<Length> most = limit(MOST);
    return least.isPresent() && most.isPresent()
        ? missing(
            endPlay,
            "one of the two limits corrected: the least end play "
                + least.get()
                + " is above the most "
                + most.get())
        : missing(endPlay, "band of the end play");
  }

  private Working work(Length endPlay, EndPlayBand band, Station station) {
    List<Shim> shims = shims(station);
    if (!shims.stream().allMatch(ShimFigures::isMeasured)) {
      return missing(endPlay, "thickness of each shim fitted");
    }
    if (!shims.stream().map(Shim::place).allMatch(this::isDecided)) {
      return missing(endPlay, "a decision on each shim fitted: look at it first");
    }
    boolean nothingGoes = shims.stream().map(Shim::place).noneMatch(replaced::contains);
    return nothingGoes && band.contains(endPlay)
        ? changed(EndPlayShims.inBand(endPlay, band))
        : oneStackOnly(chosen(endPlay, band, station));
  }

  private static boolean isMeasured(Shim shim) {
    return Bench.last(shim.thickness()).filter(thick -> thick.nanometres() > 0).isPresent();
  }

  private boolean isDecided(Place shim) {
    return replaced.contains(shim) || good.contains(shim);
  }

  private Working oneStackOnly(Working working) {
    return shims(Station.HEAD_END).isEmpty()
        ? working
        : working.result("change one stack only", "this one or the one at the other end");
  }

  private Figure figure(Station station, Working working) {
    return new Figure(bench.wheelEnd() + "/shim/" + station.id(), working);
  }

  private static Working missing(Length endPlay, String what) {
    return EndPlayShims.missing(what).given("end play", endPlay);
  }

  private Working chosen(Length endPlay, EndPlayBand band, Station station) {
    List<Shim> shims = shims(station);
    List<ShimPiece> fitted =
        shims.stream().filter(shim -> !replaced.contains(shim.place())).map(this::piece).toList();
    Length discarded =
        shims.stream()
            .filter(shim -> replaced.contains(shim.place()))
            .map(shim -> Bench.last(shim.thickness()).orElseThrow())
            .reduce(Length::plus)
            .orElse(NOTHING);
    ShimPlan plan = EndPlayShims.choose(endPlay, band, fitted, discarded, stock.left());
    Working working = plan.working();
    if (!stock.takenBy().isEmpty()) {
      working = working.given("shims at hand are those left by", stock.takenBy());
    }
    if (station == Station.SPLINE_END && plan.choice() instanceof ShimChoice.Fits fits) {
      stock.take(fits.putIn(), bench.wheelEnd().toString());
    }
    return changed(working);
  }

  /** A new part of another width changes the end play that the shims are chosen for. */
  private Working changed(Working working) {
    return new NewInStack(replacedHere())
        .inWords()
        .map(
            parts ->
                working
                    .result("only an estimate:", "measure with " + parts + " in, then choose")
                    .missing("end play with " + parts + " in"))
        .orElse(working);
  }

  private List<Place> replacedHere() {
    return replaced.stream().filter(place -> place.wheelEnd().equals(bench.wheelEnd())).toList();
  }

  private Optional<EndPlayBand> band() {
    Optional<Length> least = limit(LEAST);
    return limit(MOST)
        .flatMap(
            most ->
                least
                    .filter(one -> most.compareTo(one) >= 0)
                    .map(one -> new EndPlayBand(one, most)));
  }

  private Optional<Length> limit(String id) {
    return bench.limit(id).map(limit -> (Length) limit.value());
  }

  private List<Shim> shims(Station station) {
    return bench.fitted(Shim.class).filter(shim -> shim.station() == station).toList();
  }

  private ShimPiece piece(Shim shim) {
    return new ShimPiece(Bench.last(shim.thickness()).orElseThrow(), shim.condition());
  }
}
