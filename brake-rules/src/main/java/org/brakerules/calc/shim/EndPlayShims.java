package org.brakerules.calc.shim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.brakerules.calc.Working;
import org.brakerules.model.quantity.Length;

/**
 * Finds the shims that bring an end play inside its band, one stack at a time.
 *
 * <p>Source of the rule: the band of TM 5-4210-220-12; the search is arithmetic on whole
 * nanometres, so no choice rests on rounding.
 */
public final class EndPlayShims {

  private EndPlayShims() {}

  /**
   * The best stack out of what is fitted and what is at hand: fewest pieces, then the end play
   * nearest the middle of the band, then most salvaged pieces, then the thickest pieces first.
   *
   * @param endPlay the end play measured with the fitted shims in place
   * @param band the end play that is allowed
   * @param fitted the shims now in the stack that are fit to go back
   * @param discarded the thickness of shims now in the stack that are not, zero if there are none
   * @param atHand the shims that may go in
   * @throws IllegalArgumentException if the end play or the discarded thickness is below zero
   */
  public static ShimPlan choose(
      Length endPlay,
      EndPlayBand band,
      Collection<ShimPiece> fitted,
      Length discarded,
      Collection<ShimPiece> atHand) {
    if (endPlay.isNegative() || discarded.isNegative()) {
      throw new IllegalArgumentException(
          "No end play or thickness below zero: " + endPlay + ", " + discarded);
    }
    ShimChoice choice = choice(endPlay, band, fitted, discarded, atHand);
    return new ShimPlan(choice, ShimWorking.of(endPlay, band, fitted, discarded, atHand, choice));
  }

  /** The work where the end play is inside its band as it is: no shim is touched for its sake. */
  public static Working inBand(Length endPlay, EndPlayBand band) {
    return ShimWorking.start()
        .given("end play", endPlay)
        .given("band", band.min() + " to " + band.max())
        .result("inside the band, leave the shims; end play", endPlay);
  }

  /** The work without a choice, where something must be known first. */
  public static Working missing(String what) {
    return ShimWorking.start().missing(what);
  }

  private static ShimChoice choice(
      Length endPlay,
      EndPlayBand band,
      Collection<ShimPiece> fitted,
      Length discarded,
      Collection<ShimPiece> atHand) {
    if (endPlay.nanometres() == 0) {
      return new ShimChoice.Bound();
    }
    Length gap = fitted.stream().map(ShimPiece::thickness).reduce(endPlay, Length::plus);
    gap = gap.plus(discarded);
    if (gap.compareTo(band.min()) < 0) {
      return new ShimChoice.TooTightWithoutShims(gap);
    }
    List<ShimPiece> pieces = new ArrayList<>(fitted);
    pieces.addAll(atHand);
    ShimSearch search = ShimSearch.of(pieces, gap, band);
    Optional<ShimStack> best = search.best();
    if (best.isPresent()) {
      return fits(best.get(), gap, fitted);
    }
    ShimChoice nothing = nothingFits(search, gap, band);
    return search.isTooLarge() ? new ShimChoice.TooManyStacks() : nothing;
  }

  private static ShimChoice fits(ShimStack best, Length gap, Collection<ShimPiece> fitted) {
    List<ShimPiece> takeOut = without(fitted, best.pieces());
    List<ShimPiece> putIn = without(best.pieces(), fitted);
    return new ShimChoice.Fits(best.pieces(), takeOut, putIn, best.endPlay(gap));
  }

  private static ShimChoice nothingFits(ShimSearch search, Length gap, EndPlayBand band) {
    ShimStack nearest = search.thickestBelowBand();
    Length left = nearest.endPlay(gap);
    return new ShimChoice.NothingFits(
        nearest.pieces(), left.minus(band.max()), left.minus(band.min()));
  }

  private static List<ShimPiece> without(
      Collection<ShimPiece> pieces, Collection<ShimPiece> others) {
    List<ShimPiece> left = new ArrayList<>(pieces);
    others.forEach(left::remove);
    left.sort(ShimPiece.THICKEST_FIRST);
    return left;
  }
}
