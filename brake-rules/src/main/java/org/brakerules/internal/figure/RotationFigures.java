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
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** How much rotation of the cam wear has used, how much is left, and how much lining that is. */
final class RotationFigures {

  private static final Length NOTHING = new Length(0, LengthUnit.INCH);

  private RotationFigures() {}

  static List<Figure> of(Bench bench) {
    List<Figure> figures = new ArrayList<>();
    used(bench).ifPresent(figures::add);
    left(bench).ifPresent(figures::add);
    return figures;
  }

  private static Optional<Figure> used(Bench bench) {
    return thinnest(bench).map(thin -> new Figure(bench.wheelEnd().toString(), used(bench, thin)));
  }

  private static Working used(Bench bench, Length thinnest) {
    Optional<Length> lining = bench.size(Size.NEW_LINING);
    if (lining.isEmpty()) {
      return CamRotation.usedMissing("thickness of a new lining, by the maker");
    }
    if (lining.get().compareTo(thinnest) < 0) {
      return CamRotation.usedContradicted(
          "thickness of the lining", thinnest, "that of a new one", lining.get());
    }
    return withDrum(bench, lining.get().minus(thinnest));
  }

  private static Working withDrum(Bench bench, Length lining) {
    Optional<Length> nominal = bench.layout().drumDiameter();
    Optional<Length> widest = widest(bench);
    if (nominal.isEmpty() || widest.isEmpty()) {
      return CamRotation.usedMissing("diameter of the drum, measured and nominal");
    }
    if (widest.get().compareTo(nominal.get()) < 0) {
      return CamRotation.usedContradicted(
          "diameter of the drum", widest.get(), "its nominal size", nominal.get());
    }
    return withRoller(bench, lining, Bench.onRadius(widest.get().minus(nominal.get())));
  }

  private static Working withRoller(Bench bench, Length lining, Length drum) {
    Optional<Length> fresh = bench.positive(Size.NEW_ROLLER);
    Optional<Length> worn = bench.positive(Size.ROLLER);
    if (fresh.isPresent() && worn.isPresent() && worn.get().compareTo(fresh.get()) > 0) {
      return CamRotation.usedContradicted(
          "diameter of the roller", worn.get(), "that of a new one", fresh.get());
    }
    Optional<Length> roller =
        fresh.flatMap(one -> worn.map(other -> Bench.onRadius(one.minus(other))));
    Working working =
        CamRotation.usedBy(lining, drum, roller.orElse(NOTHING), bench.lift()).working();
    Working told =
        roller.isPresent()
            ? working
            : working.assumed("wear of the roller on its radius", "it was not measured");
    return bench.withLift(told, "lift radius");
  }

  /** The lining that has lost most lets its shoe go farthest. */
  private static Optional<Length> thinnest(Bench bench) {
    return bench
        .fitted(Lining.class)
        .flatMap(lining -> Bench.at(lining.thickness(), Station.SHOE_CENTRE).stream())
        .min(Comparator.naturalOrder());
  }

  /** A shoe goes farthest where the drum is widest. */
  private static Optional<Length> widest(Bench bench) {
    return bench
        .one(Drum.class)
        .flatMap(
            drum ->
                drum.diameter().readings().stream()
                    .map(Reading::value)
                    .max(Comparator.naturalOrder()));
  }

  private static Optional<Figure> left(Bench bench) {
    Optional<Camshaft> shaft = bench.one(Camshaft.class);
    Optional<Angle> turned = shaft.flatMap(one -> Bench.last(one.rotation(), Method.PROTRACTOR));
    Optional<LimitInForce> limit = bench.limit("camshaft.rotation.max");
    if (turned.isEmpty()) {
      return Optional.empty();
    }
    String about = shaft.orElseThrow().place().toString();
    if (limit.isEmpty()) {
      return Optional.of(
          new Figure(about, CamRotation.leftMissing(turned.get(), "limit, by the maker")));
    }
    Angle most = (Angle) limit.get().value();
    return Optional.of(
        new Figure(
            shaft.orElseThrow().place().toString(),
            bench.withLift(CamRotation.left(turned.get(), most, bench.lift()), "lift radius")));
  }
}
