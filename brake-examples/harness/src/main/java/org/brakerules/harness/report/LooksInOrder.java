package org.brakerules.harness.report;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.NextLook;
import org.brakerules.model.part.Place;

/** What to look at and measure next on one wheel end: what bears on most parts comes first. */
final class LooksInOrder {

  private final List<NextLook> next;
  private final List<Decision> decisions;

  /**
   * Knows the order and the parts.
   *
   * @param next the looks of the whole job in their order
   * @param decisions the parts whose looks are wanted
   */
  LooksInOrder(List<NextLook> next, List<Decision> decisions) {
    this.next = next;
    this.decisions = decisions;
  }

  boolean isEmpty() {
    return next.stream().noneMatch(look -> needed(look).isPresent());
  }

  void write(Page page) {
    int number = 0;
    for (NextLook look : next) {
      Optional<Needed> needed = needed(look);
      if (needed.isPresent()) {
        number++;
        NeededInWords.write(needed.get(), number, bearsOn(look), page);
      }
    }
  }

  private Optional<Needed> needed(NextLook look) {
    return decisions.stream()
        .filter(decision -> decision.part().equals(look.part()))
        .flatMap(decision -> decision.needed().stream())
        .filter(needed -> needed.point().equals(look.point()))
        .findFirst();
  }

  /** The other parts that wait for the same look. */
  private static String bearsOn(NextLook look) {
    List<Place> others =
        look.bearsOn().stream().filter(place -> !place.equals(look.part())).toList();
    return WheelEndNotes.names(others);
  }
}
