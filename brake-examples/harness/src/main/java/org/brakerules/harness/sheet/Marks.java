package org.brakerules.harness.sheet;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.reading.Station;
import org.brakerules.parts.Handling;
import org.brakerules.parts.PartsLine;
import org.brakerules.parts.WheelEndParts;

/**
 * What becomes of each part as a picture shows it. A good part need not go back as it is: a shim
 * comes out for another, a shoe is relined or exchanged for its worn lining, and a part gives way
 * where a new one needs or brings another.
 */
final class Marks {

  private final Optional<Working> shims;
  private final boolean shoesOrdered;
  private final Set<Place> renewedBesideAnother;
  private final Set<Place> fittedNew;

  /**
   * Knows what is not in the decisions.
   *
   * @param shims how the shims at the adjuster end were worked out
   * @param parts what is ordered for the wheel end
   * @param wheelEnd the wheel end, whose new parts are fitted already
   */
  Marks(Optional<Working> shims, Optional<WheelEndParts> parts, WheelEnd wheelEnd) {
    this.shims = shims;
    this.fittedNew =
        wheelEnd.parts().stream()
            .filter(part -> part.condition() == Condition.NEW)
            .map(Part::place)
            .collect(Collectors.toSet());
    this.renewedBesideAnother =
        parts.stream()
            .flatMap(list -> list.lines().stream())
            .filter(PartsLine::isRenewedBesideAnother)
            .flatMap(PartsLine::own)
            .collect(Collectors.toSet());
    this.shoesOrdered =
        parts.stream()
            .flatMap(list -> list.lines().stream())
            .filter(line -> line.handling() == Handling.ORDER)
            .anyMatch(line -> line.item().part().equals(Optional.of(PartKind.SHOE)));
  }

  List<Mark> of(List<Decision> decisions) {
    return decisions.stream().map(this::of).toList();
  }

  private Mark of(Decision decision) {
    Mark mark = Mark.of(decision);
    if (renewedBesideAnother.contains(decision.part()) && BenchDecisions.givesWay(decision)) {
      return Mark.REPLACE;
    }
    if (mark != Mark.REUSE && mark != Mark.CLEAN) {
      return mark;
    }
    if (mark == Mark.REUSE && fittedNew.contains(decision.part())) {
      return Mark.IN_PLACE;
    }
    return switch (decision.part().kind()) {
      case SHOE -> shoesOrdered ? Mark.EXCHANGE : mark;
      case SHIM -> decision.part().station() == Station.SPLINE_END ? shim(mark) : mark;
      default -> mark;
    };
  }

  /** Which of several shims comes out is for the stack to say; here they are to be adjusted. */
  private Mark shim(Mark asDecided) {
    Optional<String> out = shims.flatMap(working -> value(working.results(), "take out"));
    if (out.isEmpty()) {
      return asDecided;
    }
    return out.equals(shims.flatMap(working -> value(working.given(), "shims fitted")))
        ? Mark.COMES_OUT
        : Mark.ADJUST;
  }

  private static Optional<String> value(List<Working.Named> values, String name) {
    return values.stream()
        .filter(one -> one.name().equals(name))
        .map(Working.Named::value)
        .findFirst();
  }
}
