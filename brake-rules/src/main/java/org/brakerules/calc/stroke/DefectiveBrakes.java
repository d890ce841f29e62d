package org.brakerules.calc.stroke;

import java.util.Collection;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * How many brakes of a vehicle count as defective for their stroke, and whether that is a fifth of
 * all. A brake 1/4 in or more beyond its limit counts whole, one less beyond counts half, and two
 * halves make a whole.
 *
 * @param whole how many are 1/4 in or more beyond their limit
 * @param half how many are beyond it by less
 * @param needed how many make a fifth of all brakes
 * @param working how it was worked out
 */
public record DefectiveBrakes(int whole, int half, int needed, Working working) {

  private static final Length WHOLE_FROM = Length.parse("1/4 in");
  private static final int A_FIFTH = 5;

  /**
   * Counts the brakes of a vehicle or combination.
   *
   * @param brakes how many service brakes it has
   * @param beyond how far each brake over its limit is beyond it
   * @throws IllegalArgumentException if more brakes are beyond their limit than there are, or one
   *     of them is not beyond it
   */
  public static DefectiveBrakes of(int brakes, Collection<Length> beyond) {
    if (brakes < 1 || beyond.size() > brakes) {
      throw new IllegalArgumentException(
          beyond.size() + " brakes over their limit of " + brakes + " brakes");
    }
    int whole = 0;
    for (Length over : beyond) {
      if (over.nanometres() <= 0) {
        throw new IllegalArgumentException("A brake " + over + " beyond its limit is not over it.");
      }
      whole += over.compareTo(WHOLE_FROM) >= 0 ? 1 : 0;
    }
    int half = beyond.size() - whole;
    int needed = (brakes + A_FIFTH - 1) / A_FIFTH;
    return new DefectiveBrakes(whole, half, needed, working(brakes, whole, half, needed));
  }

  /** How many count as defective; a half left over does not. */
  public int counted() {
    return whole + half / 2;
  }

  /** Whether a fifth or more of the brakes are defective. */
  public boolean isAFifth() {
    return counted() >= needed;
  }

  private static Working working(int brakes, int whole, int half, int needed) {
    int counted = whole + half / 2;
    return Working.of(
            "stroke.defective-brakes",
            "Defective brakes by their stroke",
            "defective = whole + half / 2, rounded down; a fifth = brakes / 5, rounded up",
            Basis.exact(
                Standing.MEMORY, "the fifth as read in the press; how halves count from memory"))
        .given("service brakes looked at", brakes)
        .given("1/4 in or more beyond the limit", whole)
        .given("less beyond it", half)
        .step(whole + " + " + half + " / 2, rounded down = " + counted)
        .step(brakes + " / 5, rounded up = " + needed)
        .result(
            "defective",
            counted
                + " of the "
                + needed
                + " that make a fifth of these brakes: "
                + (counted >= needed ? "reached" : "not reached"));
  }
}
