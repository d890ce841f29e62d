package org.brakerules.calc.wear;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * The bore of a drum, from its diameter measured across at several places around each of three
 * depths.
 *
 * @param largest the largest diameter, which a limit takes
 * @param outOfRound how much the diameters of one depth differ at most, not below zero
 * @param taper how much open and closed side differ, each by its largest, not below zero
 * @param working how it was worked out
 */
public record DrumBore(Length largest, Length outOfRound, Length taper, Working working) {

  /**
   * Works out the bore.
   *
   * @param openSide the diameters near the open side, around the drum
   * @param middle the diameters in the middle of the braking path
   * @param closedSide the diameters near the closed side
   * @throws IllegalArgumentException if a depth has fewer than two diameters; one cannot show
   *     whether it is round
   */
  public static DrumBore of(List<Length> openSide, List<Length> middle, List<Length> closedSide) {
    List<List<Length>> depths = List.of(openSide, middle, closedSide);
    if (depths.stream().anyMatch(depth -> depth.size() < 2)) {
      throw new IllegalArgumentException("Measure at least two diameters at each of three depths.");
    }
    Length largest = most(depths.stream().map(DrumBore::most).toList());
    Length outOfRound = most(depths.stream().map(DrumBore::spread).toList());
    Length taper = most(openSide).minus(most(closedSide)).abs();
    Working working =
        start()
            .given("open side", listed(openSide))
            .given("middle", listed(middle))
            .given("closed side", listed(closedSide))
            .step("out of round, at the worst depth " + outOfRound)
            .step("taper " + most(openSide) + " and " + most(closedSide) + " differ by " + taper)
            .result("largest diameter", largest)
            .result("out of round", outOfRound)
            .result("taper", taper);
    return new DrumBore(largest, outOfRound, taper, working);
  }

  /**
   * What may still be cut out of a drum, on its diameter; below zero if it is past its limit.
   *
   * @param largest the largest diameter as measured
   * @param turningLimit the largest diameter it may have just turned
   * @param basis where that limit comes from
   */
  public static Working leftToTurn(Length largest, Length turningLimit, Basis basis) {
    Length left = turningLimit.minus(largest);
    Working working =
        turning(basis)
            .given("largest diameter", largest)
            .given("limit just turned", turningLimit)
            .step(turningLimit + " - " + largest + " = " + left)
            .result("left on the diameter", left);
    return left.nanometres() <= 0
        ? working.result("at nothing or below", "the drum is not turned any more")
        : working;
  }

  /** The same where nothing may be turned, or not yet. */
  public static Working notTurned(String what) {
    return turning(Basis.exact(Standing.COMMON_PRACTICE, "only a sound drum is turned"))
        .missing(what);
  }

  private static Working turning(Basis basis) {
    return Working.of(
        "drum.left-to-turn",
        "What may still be turned out of the drum",
        "left = limit just turned - largest diameter",
        basis);
  }

  private static String listed(List<Length> diameters) {
    return diameters.stream().map(Length::toString).collect(Collectors.joining(", "));
  }

  private static Length spread(Collection<Length> diameters) {
    return most(diameters).minus(diameters.stream().min(Comparator.naturalOrder()).orElseThrow());
  }

  private static Length most(Collection<Length> lengths) {
    return lengths.stream().max(Comparator.naturalOrder()).orElseThrow();
  }

  /** The same without a result, where something must be known first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  private static Working start() {
    return Working.of(
        "drum.bore",
        "Bore of the drum",
        "out of round = largest - smallest of one depth; taper = open side - closed side",
        Basis.exact(Standing.COMMON_PRACTICE, "three depths, four places 45 deg apart"));
  }
}
