package org.brakerules.calc.play;

import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * The radial play of a camshaft in one bushing, which is the clearance on the diameter.
 *
 * @param play the play, not below zero
 * @param working how it was worked out
 */
public record RadialPlay(Length play, Working working) {

  private static final String TITLE = "Radial play of the camshaft in its bushing";

  /**
   * The play a dial indicator shows while the shaft is lifted and lowered by hand: its whole
   * movement, because the shaft goes from one side of the bore to the other.
   *
   * @param wholeMovement the whole movement of the dial, not below zero
   * @throws IllegalArgumentException if it is below zero
   */
  public static RadialPlay byDial(Length wholeMovement) {
    if (wholeMovement.isNegative()) {
      throw new IllegalArgumentException("No movement of a dial: " + wholeMovement);
    }
    return new RadialPlay(
        wholeMovement,
        byDial()
            .given("whole movement", wholeMovement)
            .step("play = " + wholeMovement)
            .result("play", wholeMovement));
  }

  /**
   * The play that bore and journal leave.
   *
   * @param bore the inside diameter of the bushing
   * @param journal the diameter of the journal at the same end
   * @throws IllegalArgumentException if the journal is thicker than the bore is wide
   */
  public static RadialPlay byDiameters(Length bore, Length journal) {
    if (journal.compareTo(bore) > 0) {
      throw new IllegalArgumentException(
          "A journal of "
              + journal
              + " does not go into a bore of "
              + bore
              + "; measure both again.");
    }
    Length play = bore.minus(journal);
    return new RadialPlay(
        play,
        byDiameters()
            .given("bore", bore)
            .given("journal", journal)
            .step(bore + " - " + journal + " = " + play)
            .result("play", play));
  }

  /** The play of bore and journal without a result, where something must be known first. */
  public static Working missing(String what) {
    return byDiameters().missing(what);
  }

  /** The work of a journal that is wider than the bore it turns in. */
  public static Working contradicted(Length bore, Length journal) {
    return byDiameters().contradicted("journal", journal, "bore", bore);
  }

  private static Working byDiameters() {
    return Working.of(
        "radial-play",
        TITLE,
        "play = bore - journal",
        Basis.exact(Standing.DERIVED, "clearance on the diameter"));
  }

  /** The play by a dial without a result, where something must be known first. */
  public static Working dialMissing(String what) {
    return byDial().missing(what);
  }

  private static Working byDial() {
    return Working.of(
        "radial-play",
        TITLE,
        "play = whole movement of the dial",
        Basis.exact(Standing.COMMON_PRACTICE, "lifted by hand; prying bends the bracket into it"));
  }
}
