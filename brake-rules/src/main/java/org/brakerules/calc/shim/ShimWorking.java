package org.brakerules.calc.shim;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/** Writes down how a stack of shims was chosen. */
final class ShimWorking {

  private ShimWorking() {}

  static Working of(
      Length endPlay,
      EndPlayBand band,
      Collection<ShimPiece> fitted,
      Length discarded,
      Collection<ShimPiece> atHand,
      ShimChoice choice) {
    Working working =
        start()
            .given("end play", endPlay)
            .given("band", band.min() + " to " + band.max())
            .given("shims fitted", listed(fitted))
            .given("shims at hand", listed(atHand));
    Working given =
        discarded.nanometres() == 0
            ? working
            : working.given("shims fitted and not fit to go back", discarded);
    return result(given, endPlay, discarded, choice);
  }

  static Working start() {
    return Working.of(
        "end-play.shims",
        "Shims for the end play",
        "end play = end play measured + shims taken out - shims put in",
        Basis.exact(Standing.DERIVED, "every stack of the shims at hand was tried"));
  }

  private static Working result(
      Working working, Length endPlay, Length discarded, ShimChoice choice) {
    if (choice instanceof ShimChoice.Fits fits) {
      return working
          .step(step(endPlay, discarded, fits))
          .result("take out", takenOut(fits, discarded))
          .result("put in", listed(fits.putIn()))
          .result("end play", fits.endPlay());
    }
    if (choice instanceof ShimChoice.NothingFits none) {
      return working
          .step("no stack of the shims at hand leaves an end play inside the band")
          .result(
              none.beside().isEmpty()
                  ? "a shim that would do, alone"
                  : "a shim that would do beside " + listed(none.beside()),
              none.thinnest() + " to " + none.thickest());
    }
    if (choice instanceof ShimChoice.TooTightWithoutShims tight) {
      return working
          .step("without any shim " + tight.endPlay() + " is left")
          .result("no shim is at fault, end play without any", tight.endPlay());
    }
    if (choice instanceof ShimChoice.TooManyStacks) {
      return working.missing(
          "a smaller choice: the shims at hand make too many stacks to try them all");
    }
    return working
        .step("nothing moves, so that how hard the parts press on each other is not known")
        .missing("end play with shims taken out until the shaft moves");
  }

  private static String takenOut(ShimChoice.Fits fits, Length discarded) {
    boolean noneFit = fits.takeOut().isEmpty();
    if (discarded.nanometres() == 0) {
      return listed(fits.takeOut());
    }
    String unfit = "every shim not fit to go back, " + discarded + " together";
    return noneFit ? unfit : listed(fits.takeOut()) + ", and " + unfit;
  }

  private static String step(Length endPlay, Length discarded, ShimChoice.Fits fits) {
    Length out = sum(fits.takeOut(), endPlay).plus(discarded);
    Length in = sum(fits.putIn(), endPlay);
    return endPlay + " + " + out + " - " + in + " = " + fits.endPlay();
  }

  private static Length sum(List<ShimPiece> pieces, Length like) {
    Length nothing = new Length(0, like.unit());
    return pieces.stream().map(ShimPiece::thickness).reduce(nothing, Length::plus);
  }

  /** The pieces as a technician counts them, such as {@code 2 x 0.030 in new}. */
  private static String listed(Collection<ShimPiece> pieces) {
    if (pieces.isEmpty()) {
      return "none";
    }
    return pieces.stream()
        .sorted(ShimPiece.THICKEST_FIRST)
        .collect(Collectors.groupingBy(piece -> piece, LinkedHashMap::new, Collectors.counting()))
        .entrySet()
        .stream()
        .map(
            entry ->
                entry.getValue()
                    + " x "
                    + entry.getKey().thickness()
                    + (entry.getKey().isSalvaged() ? " used" : " new"))
        .collect(Collectors.joining(", "));
  }
}
