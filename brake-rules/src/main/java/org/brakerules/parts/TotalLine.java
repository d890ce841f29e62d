package org.brakerules.parts;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.part.WheelEndPath;

/**
 * The lines of several wheel ends that speak of the same, put together.
 *
 * @param item what is ordered, kept, saved or looked at
 * @param amount how many pieces over all the wheel ends
 * @param handling what to do with them
 * @param comesWith the item they come with; empty if they are bought for themselves
 * @param match by what the right part is known
 * @param wheelEnds the wheel ends they are for
 */
public record TotalLine(
    Item item,
    Amount amount,
    Handling handling,
    Optional<Item> comesWith,
    List<Detail> match,
    List<WheelEndPath> wheelEnds) {

  /** Keeps its own copies of the lists. */
  public TotalLine {
    match = List.copyOf(match);
    wheelEnds = List.copyOf(wheelEnds);
  }
}
