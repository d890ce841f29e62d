package org.brakerules.parts;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;

/**
 * The parts list of one wheel end.
 *
 * @param wheelEnd the wheel end
 * @param inspected whether it is in the job; if not, it is the partner of one that is
 * @param reline whether its linings are renewed, so that the minimum set of a reline is needed
 * @param holds the parts work is stopped on, in path order
 * @param lines its lines, what is ordered first
 */
public record WheelEndParts(
    WheelEndPath wheelEnd,
    boolean inspected,
    boolean reline,
    List<Place> holds,
    List<PartsLine> lines) {

  /** Keeps its own copies of the lists. */
  public WheelEndParts {
    holds = List.copyOf(holds);
    lines = List.copyOf(lines);
  }

  /** What the axle asks of this end though it is not in the job; empty if it is, or nothing is. */
  Optional<OtherEnd> otherEnd() {
    OtherEnd other = new OtherEnd(wheelEnd, inAxleSet(Handling.ORDER), inAxleSet(Handling.INSPECT));
    return inspected || (other.renewed().isEmpty() && other.compared().isEmpty())
        ? Optional.empty()
        : Optional.of(other);
  }

  private List<PartKind> inAxleSet(Handling handling) {
    return lines.stream()
        .filter(line -> line.handling() == handling)
        .filter(line -> line.grounds().stream().anyMatch(one -> one.kind() == Ground.Kind.AXLE_SET))
        .flatMap(line -> line.places().stream())
        .map(Place::kind)
        .distinct()
        .sorted()
        .toList();
  }
}
