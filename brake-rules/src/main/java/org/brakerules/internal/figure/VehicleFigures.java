package org.brakerules.internal.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.brakerules.calc.Working;
import org.brakerules.calc.stroke.DefectiveBrakes;
import org.brakerules.figure.Figure;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.quantity.Length;

/** What is worked out over several wheel ends: the balance of an axle, and defective brakes. */
final class VehicleFigures {

  private static final String STROKE = "chamber.applied-stroke.max";

  private VehicleFigures() {}

  static List<Figure> of(List<Bench> benches) {
    List<Figure> figures = new ArrayList<>(axles(benches));
    defective(benches).ifPresent(figures::add);
    return figures;
  }

  /** Both ends of an axle stand next to each other in path order. */
  private static List<Figure> axles(List<Bench> benches) {
    List<Figure> figures = new ArrayList<>();
    for (int i = 1; i < benches.size(); i++) {
      Bench left = benches.get(i - 1);
      Bench right = benches.get(i);
      if (left.wheelEnd().partner().equals(right.wheelEnd())) {
        ForceFigures.acrossAxle(left, right).ifPresent(figures::add);
      }
    }
    return figures;
  }

  private static Optional<Figure> defective(List<Bench> benches) {
    List<Check> strokes =
        benches.stream()
            .flatMap(MarginFigures::judged)
            .filter(check -> check.limitId().equals(STROKE))
            .toList();
    long brakes = strokes.stream().map(Check::part).distinct().count();
    if (brakes < 2) {
      return Optional.empty();
    }
    Working working =
        DefectiveBrakes.of((int) brakes, beyond(strokes))
            .working()
            .missing("stroke of every other brake: the fifth is of all brakes of the vehicle");
    return Optional.of(new Figure("", unproven(working, strokes)));
  }

  private static Working unproven(Working working, List<Check> strokes) {
    long unproven =
        strokes.stream().filter(check -> check.status() == CheckStatus.UNPROVEN).count();
    return unproven == 0
        ? working
        : working.missing(
            unproven + " of the strokes with a finer instrument: too close to count, not counted");
  }

  /** A brake that is beyond two limits counts by the one it is farther beyond. */
  private static List<Length> beyond(List<Check> strokes) {
    return strokes.stream()
        .filter(check -> check.status() == CheckStatus.BEYOND)
        .collect(
            Collectors.toMap(
                Check::part,
                check -> (Length) check.margin().orElseThrow(),
                (one, other) -> one.compareTo(other) >= 0 ? one : other,
                TreeMap::new))
        .values()
        .stream()
        .filter(length -> length.nanometres() > 0)
        .toList();
  }
}
