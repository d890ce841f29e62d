package org.brakerules.calc.play;

import java.util.Arrays;
import java.util.Comparator;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * How far a bushing is worn to one side, by play read in four directions.
 *
 * @param most the direction of the most play
 * @param least the direction of the least play
 * @param difference how much the two differ, not below zero
 * @param working how it was worked out
 */
public record OneSidedWear(
    PlayDirection most, PlayDirection least, Length difference, Working working) {

  /** Compares the play of all four directions; of equal ones the first counts. */
  public static OneSidedWear of(PlayInFourDirections plays) {
    Comparator<PlayDirection> byPlay = Comparator.comparing(plays::in);
    PlayDirection most = first(byPlay.reversed());
    PlayDirection least = first(byPlay);
    Length difference = plays.in(most).minus(plays.in(least));
    Working working = start();
    for (PlayDirection direction : PlayDirection.values()) {
      working = working.given(direction.inWords(), plays.in(direction));
    }
    return new OneSidedWear(
        most,
        least,
        difference,
        working
            .step(plays.in(most) + " - " + plays.in(least) + " = " + difference)
            .result("most play " + most.inWords() + ", difference", difference));
  }

  /** The work without a result, where something must be known first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  private static Working start() {
    return Working.of(
        "radial-play.one-sided",
        "Wear of the bushing to one side",
        "difference = most play - least play",
        Basis.exact(
            Standing.COMMON_PRACTICE,
            "a bracket or tube out of line, or an adjuster that pulls sideways, wears a bushing"
                + " to one side"));
  }

  private static PlayDirection first(Comparator<PlayDirection> order) {
    return Arrays.stream(PlayDirection.values()).min(order).orElseThrow();
  }
}
