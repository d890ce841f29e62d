package org.brakerules.calc.play;

import java.util.Optional;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * What a radial play is made of. A wear below zero says that the part is better than the size it is
 * held against; the three always make up the play.
 *
 * @param whenNew the play of new parts
 * @param bushingWear what the bushing has lost
 * @param journalWear what the journal has lost
 * @param working how it was worked out
 */
public record PlayShare(Length whenNew, Length bushingWear, Length journalWear, Working working) {

  /**
   * Splits the play of a bushing and a journal by their sizes when new.
   *
   * @param bore the bore of the bushing as measured
   * @param journal the journal as measured
   * @param newBore the bore of a new bushing, fitted and reamed
   * @param newJournal the journal of a new camshaft
   */
  public static PlayShare of(Length bore, Length journal, Length newBore, Length newJournal) {
    Length whenNew = newBore.minus(newJournal);
    Length bushingWear = bore.minus(newBore);
    Length journalWear = newJournal.minus(journal);
    Working working =
        start()
            .given("bore", bore)
            .given("journal", journal)
            .given("bore when new", newBore)
            .given("journal when new", newJournal)
            .step("when new " + newBore + " - " + newJournal + " = " + whenNew)
            .step("bushing " + bore + " - " + newBore + " = " + bushingWear)
            .step("journal " + newJournal + " - " + journal + " = " + journalWear)
            .result("play when new", whenNew)
            .result("wear of the bushing", bushingWear)
            .result("wear of the journal", journalWear);
    return new PlayShare(whenNew, bushingWear, journalWear, working);
  }

  /** What is missing where a size when new is not known. */
  public static Working unknown(Optional<Length> newBore, Optional<Length> newJournal) {
    Working working = start();
    working = newBore.isEmpty() ? working.missing("bore of a new bushing, by the maker") : working;
    return newJournal.isEmpty()
        ? working.missing("journal of a new camshaft, by the maker")
        : working;
  }

  private static Working start() {
    return Working.of(
        "radial-play.share",
        "What the radial play is made of",
        "play = play when new + wear of the bushing + wear of the journal",
        Basis.exact(Standing.DERIVED, "sizes when new by the maker"));
  }

  /** The play of the worn parts. */
  public Length play() {
    return whenNew.plus(bushingWear).plus(journalWear);
  }
}
