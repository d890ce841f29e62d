package org.brakerules.internal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.brakerules.calc.Working;
import org.brakerules.calc.shim.EndPlayBand;
import org.brakerules.calc.shim.EndPlayShims;
import org.brakerules.calc.shim.ShimPiece;
import org.brakerules.figure.Figure;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.ShimsAtHand;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Shim;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.reading.Station;

/** Which shims at hand bring the end play of the camshaft inside its band. */
final class ShimFigures {

  private static final Length NOTHING = new Length(0, LengthUnit.INCH);

  private final Bench bench;
  private final List<ShimsAtHand> atHand;
  private final Set<Place> replaced;
  private final Set<Place> good;

  /**
   * Knows the stock and the parts that go.
   *
   * @param atHand the shims that may go in
   * @param replaced the parts that are decided to be replaced
   * @param good the parts that go back, cleaned or as they are
   */
  ShimFigures(Bench bench, List<ShimsAtHand> atHand, Set<Place> replaced, Set<Place> good) {
    this.bench = bench;
    this.atHand = atHand;
    this.replaced = replaced;
    this.good = good;
  }

  /** One stack at a time: that at the spline end, where the end play is set, before the other. */
  List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    Optional<Length> endPlay =
        bench
            .one(Camshaft.class)
            .flatMap(shaft -> Bench.lastAt(shaft.endPlay(), Station.SPLINE_END));
    Optional<EndPlayBand> band = band();
    if (endPlay.isEmpty()) {
      return figures;
    }
    if (band.isEmpty()) {
      figures.add(figure(Station.SPLINE_END, missing(endPlay.get(), "band of the end play")));
      return figures;
    }
    figures.add(stack(endPlay.get(), band.get(), Station.SPLINE_END));
    if (!shims(Station.HEAD_END).isEmpty()) {
      figures.add(stack(endPlay.get(), band.get(), Station.HEAD_END));
    }
    return figures;
  }

  private Figure stack(Length endPlay, EndPlayBand band, Station station) {
    return figure(station, work(endPlay, band, station));
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
        ? EndPlayShims.inBand(endPlay, band)
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
    Working working = EndPlayShims.choose(endPlay, band, fitted, discarded, stock()).working();
    return replaced.contains(bench.wheelEnd().place(PartKind.CAMSHAFT))
        ? working.missing("end play with the new camshaft in, before the shims are chosen for good")
        : working;
  }

  private Optional<EndPlayBand> band() {
    Optional<Length> min = bench.limit("camshaft.end-play.min").map(ShimFigures::length);
    Optional<Length> max = bench.limit("camshaft.end-play.max").map(ShimFigures::length);
    return min.flatMap(
        least ->
            max.filter(most -> most.compareTo(least) >= 0)
                .map(most -> new EndPlayBand(least, most)));
  }

  private List<Shim> shims(Station station) {
    return bench.fitted(Shim.class).filter(shim -> shim.station() == station).toList();
  }

  private ShimPiece piece(Shim shim) {
    return new ShimPiece(Bench.last(shim.thickness()).orElseThrow(), shim.condition());
  }

  private List<ShimPiece> stock() {
    List<ShimPiece> pieces = new ArrayList<>();
    for (ShimsAtHand some : atHand) {
      for (int i = 0; i < some.count(); i++) {
        pieces.add(new ShimPiece(some.thickness(), some.condition()));
      }
    }
    return pieces;
  }

  private static Length length(LimitInForce limit) {
    return (Length) limit.value();
  }
}
