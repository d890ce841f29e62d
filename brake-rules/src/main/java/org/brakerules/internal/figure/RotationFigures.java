package org.brakerules.internal.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.brakerules.calc.Working;
import org.brakerules.calc.stroke.CamRotation;
import org.brakerules.figure.Figure;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.Size;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.Drum;
import org.brakerules.model.part.Lining;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;

/** How much rotation of the cam wear has used, how much is left, and how much lining that is. */
final class RotationFigures {

  private RotationFigures() {}

  static List<Figure> of(Bench bench) {
    List<Figure> figures = new ArrayList<>();
    used(bench).ifPresent(figures::add);
    left(bench).ifPresent(figures::add);
    return figures;
  }

  private static Optional<Figure> used(Bench bench) {
    Optional<Length> thinnest = thinnest(bench);
    if (thinnest.isEmpty()) {
      return Optional.empty();
    }
    Optional<Length> lining = bench.size(Size.NEW_LINING).map(thick -> thick.minus(thinnest.get()));
    Working working =
        lining
            .filter(worn -> !worn.isNegative())
            .map(worn -> used(bench, worn))
            .orElseGet(() -> CamRotation.usedMissing("thickness of a new lining, by the maker"));
    return Optional.of(new Figure(bench.wheelEnd().toString(), working));
  }

  private static Working used(Bench bench, Length lining) {
    return drumWear(bench)
        .map(drum -> CamRotation.usedBy(lining, drum, drum.minus(drum), bench.lift()).working())
        .map(working -> working.missing("wear of the rollers; taken as none"))
        .orElseGet(() -> CamRotation.usedMissing("diameter of the drum, measured and nominal"));
  }

  /** The lining that has lost most lets its shoe go farthest. */
  private static Optional<Length> thinnest(Bench bench) {
    return bench
        .fitted(Lining.class)
        .flatMap(lining -> Bench.at(lining.thickness(), Station.SHOE_CENTRE).stream())
        .min(Comparator.naturalOrder());
  }

  private static Optional<Length> drumWear(Bench bench) {
    return bench
        .layout()
        .drumDiameter()
        .flatMap(
            nominal ->
                bench
                    .one(Drum.class)
                    .flatMap(drum -> Bench.last(drum.diameter()))
                    .map(wide -> CamRotation.onRadius(wide.minus(nominal))))
        .filter(worn -> !worn.isNegative());
  }

  private static Optional<Figure> left(Bench bench) {
    Optional<Camshaft> shaft = bench.one(Camshaft.class);
    Optional<Angle> turned = shaft.flatMap(one -> Bench.last(one.rotation(), Method.PROTRACTOR));
    Optional<LimitInForce> limit = bench.limit("camshaft.rotation.max");
    if (turned.isEmpty() || limit.isEmpty()) {
      return Optional.empty();
    }
    Angle most = (Angle) limit.get().value();
    return Optional.of(
        new Figure(
            shaft.orElseThrow().place().toString(),
            CamRotation.left(turned.get(), most, bench.lift())));
  }
}
