package org.brakerules.internal.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.calc.wear.DrumBore;
import org.brakerules.calc.wear.LiningThickness;
import org.brakerules.calc.wear.LiningThickness.AtPlace;
import org.brakerules.calc.wear.ShoeDifference;
import org.brakerules.figure.Figure;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.part.Drum;
import org.brakerules.model.part.Lining;
import org.brakerules.model.part.Place;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** How evenly linings and drum are worn. */
final class WearFigures {

  private WearFigures() {}

  static List<Figure> of(Bench bench, Set<Place> replaced) {
    List<Figure> figures = new ArrayList<>();
    bench
        .fitted(Lining.class)
        .forEach(
            lining ->
                evenness(lining)
                    .map(working -> new Figure(lining.place().toString(), working))
                    .ifPresent(figures::add));
    betweenShoes(bench).ifPresent(figures::add);
    bench.one(Drum.class).flatMap(WearFigures::bore).ifPresent(figures::add);
    bench
        .one(Drum.class)
        .flatMap(drum -> leftToTurn(bench, drum, replaced.contains(drum.place())))
        .ifPresent(figures::add);
    return figures;
  }

  private static Optional<Figure> betweenShoes(Bench bench) {
    Optional<LiningThickness> upper =
        bench.at(Lining.class, Station.UPPER).flatMap(WearFigures::thickness);
    Optional<LiningThickness> lower =
        bench.at(Lining.class, Station.LOWER).flatMap(WearFigures::thickness);
    return upper
        .flatMap(one -> lower.map(other -> ShoeDifference.of(one, other)))
        .map(found -> new Figure(bench.wheelEnd().toString(), found.working()));
  }

  private static Optional<Working> evenness(Lining lining) {
    if (!lining.thickness().taken()) {
      return Optional.empty();
    }
    return Optional.of(
        thickness(lining)
            .map(LiningThickness::working)
            .orElseGet(
                () ->
                    LiningThickness.missing(
                        "thickness at both edges of cam end, shoe centre and anchor end")));
  }

  /** Both edges of three places, or nothing: an edge left out may be the thin one. */
  private static Optional<LiningThickness> thickness(Lining lining) {
    Optional<AtPlace> camEnd = edges(lining, Station.CAM_END);
    Optional<AtPlace> centre = edges(lining, Station.SHOE_CENTRE);
    Optional<AtPlace> anchorEnd = edges(lining, Station.ANCHOR_END);
    return camEnd.flatMap(
        cam ->
            centre.flatMap(
                middle -> anchorEnd.map(anchor -> LiningThickness.of(cam, middle, anchor))));
  }

  private static Optional<AtPlace> edges(Lining lining, Station station) {
    List<Length> read = Bench.at(lining.thickness(), station);
    return read.size() == 2 ? Optional.of(new AtPlace(read.get(0), read.get(1))) : Optional.empty();
  }

  private static Optional<Figure> bore(Drum drum) {
    List<Length> open = Bench.at(drum.diameter(), Station.OPEN_SIDE);
    List<Length> middle = Bench.at(drum.diameter(), Station.MIDDLE);
    List<Length> closed = Bench.at(drum.diameter(), Station.CLOSED_SIDE);
    if (!drum.diameter().taken()) {
      return Optional.empty();
    }
    boolean complete = open.size() > 1 && middle.size() > 1 && closed.size() > 1;
    Working working =
        complete
            ? DrumBore.of(open, middle, closed).working()
            : DrumBore.missing("two diameters or more at open side, middle and closed side");
    return Optional.of(new Figure(drum.place().toString(), working));
  }

  private static Optional<Figure> leftToTurn(Bench bench, Drum drum, boolean replaced) {
    Optional<Length> widest =
        drum.diameter().readings().stream().map(Reading::value).max(Comparator.naturalOrder());
    return bench
        .limit("drum.clean-up-diameter.max")
        .flatMap(limit -> widest.map(diameter -> leftToTurn(bench, diameter, limit, replaced)))
        .map(working -> new Figure(drum.place().toString(), working));
  }

  private static Working leftToTurn(
      Bench bench, Length diameter, LimitInForce limit, boolean replaced) {
    Optional<Length> nominal = bench.layout().drumDiameter();
    if (replaced) {
      return DrumBore.notTurned("nothing: the drum is replaced");
    }
    return nominal.isPresent() && diameter.compareTo(nominal.get()) < 0
        ? DrumBore.notTurned("diameter measured again: it is under the nominal " + nominal.get())
        : DrumBore.leftToTurn(diameter, (Length) limit.value(), Basis.of(limit.source()));
  }
}
