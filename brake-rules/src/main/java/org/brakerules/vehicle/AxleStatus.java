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
 * @param leftFree the free stroke on the left, not read at another moment; empty if none was
 * @param rightFree the same on the right
 */
public record AxleStatus(
    WheelEndPath left,
    AxleKind kind,
    List<AxleMatch> matches,
    Optional<Length> leftStroke,
    Optional<Length> rightStroke,
    Optional<Length> leftFree,
    Optional<Length> rightFree) {

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
    return leftStroke.flatMap(one -> rightStroke.map(other -> apart(one, other)));
  }

  private static Length apart(Length one, Length other) {
    return one.compareTo(other) >= 0 ? one.minus(other) : other.minus(one);
  }

  /**
   * Where one rod goes further than the other from its free to its applied stroke, at which end
   * something gives way under load, and where to look for it. How much may be only the maker says;
   * no source read gives a figure.
   */
  public Optional<String> givesWay() {
    return leftStroke.flatMap(
        left ->
            rightStroke.flatMap(
                right ->
                    leftFree.flatMap(
                        freeLeft ->
                            rightFree.flatMap(
                                freeRight ->
                                    givesWay(left.plus(freeRight), right.plus(freeLeft))))));
  }

  /** The sides are those of left applied less left free against right applied less right free. */
  private Optional<String> givesWay(Length leftGoes, Length rightGoes) {
    if (leftGoes.compareTo(rightGoes) == 0) {
      return Optional.empty();
    }
    WheelEndPath further = leftGoes.compareTo(rightGoes) > 0 ? left : left.partner();
    return Optional.of(
        "From free to applied stroke the rod of "
            + further
            + " goes "
            + apart(leftGoes, rightGoes)
            + " further than the other. Look at bushings, spline, bracket and drum there. From which"
            + " difference on to act is the maker's figure.");
  }
}
