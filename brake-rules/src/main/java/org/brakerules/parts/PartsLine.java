package org.brakerules.parts;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

  private static final Set<Ground.Kind> BESIDE_ANOTHER =
      EnumSet.of(Ground.Kind.NEEDED_WITH, Ground.Kind.USED_ONCE);

  /** Keeps its own copies of the lists. */
  public PartsLine {
    places = List.copyOf(places);
    grounds = List.copyOf(grounds);
    match = List.copyOf(match);
  }

  /** Whether it is new for the sake of another part, whatever was decided on it itself. */
  public boolean isRenewedBesideAnother() {
    return handling == Handling.ORDER
        && amount.isCertain()
        && grounds.stream().map(Ground::kind).anyMatch(BESIDE_ANOTHER::contains);
  }

  /** The places of the item itself, without those of other parts that need it. */
  public Stream<Place> own() {
    return places.stream().filter(place -> item.part().equals(Optional.of(place.kind())));
  }
}
