package org.brakerules.parts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.model.part.Place;

/**
 * One line of the parts list of a wheel end.
 *
 * @param item what is ordered, kept, saved or looked at
 * @param amount how many pieces
 * @param handling what to do with them
 * @param comesWith the item they come with, so that they are not bought for themselves; empty if
 *     they are
 * @param places the parts that call for them, in path order
 * @param grounds why, the gravest first; never empty
 * @param match by what the right part is known, as far as it is stated
 */
public record PartsLine(
    Item item,
    Amount amount,
    Handling handling,
    Optional<Item> comesWith,
    List<Place> places,
    List<Ground> grounds,
    List<Detail> match) {

  /** Keeps its own copies of the lists. */
  public PartsLine {
    places = List.copyOf(places);
    grounds = List.copyOf(grounds);
    match = List.copyOf(match);
  }

  /** The places of the item itself, without those of other parts that need it. */
  public Stream<Place> own() {
    return places.stream().filter(place -> item.part().equals(Optional.of(place.kind())));
  }
}
