package org.brakerules.vehicle;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;

/**
 * One axle: what must be alike at its two ends, and how far each rod goes.
 *
 * @param left its left wheel end, whether it is in the job or not
 * @param kind what the axle does
 * @param matches one for each matter that must be alike
 * @param leftStroke the last applied stroke on the left that counts against a limit; empty if none
 *     does
 * @param rightStroke the same on the right
 */
public record AxleStatus(
    WheelEndPath left,
    AxleKind kind,
    List<AxleMatch> matches,
    Optional<Length> leftStroke,
    Optional<Length> rightStroke) {

  /** Keeps its own copy of the matches. */
  public AxleStatus {
    matches = List.copyOf(matches);
  }

  /** The axle in a path, such as {@code tractor/axle2}. */
  public String path() {
    String path = left.toString();
    return path.substring(0, path.lastIndexOf('/'));
  }

  /** How far the two applied strokes lie apart; empty if one is not known. */
  public Optional<Length> strokesApart() {
    return leftStroke.flatMap(
        one ->
            rightStroke.map(
                other -> one.compareTo(other) >= 0 ? one.minus(other) : other.minus(one)));
  }
}
