package org.brakerules.internal.parts;

import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.brakerules.model.part.Place;
import org.brakerules.parts.Amount;
import org.brakerules.parts.Detail;
import org.brakerules.parts.Ground;
import org.brakerules.parts.Handling;
import org.brakerules.parts.Item;

/**
 * The pieces of one item that one place of a wheel end calls for.
 *
 * @param item the item
 * @param amount how many
 * @param handling what is done with them
 * @param comesWith the item they come with; empty if they are bought for themselves
 * @param places the parts that call for them
 * @param grounds why
 * @param match by what the right ones are known
 */
record Piece(
    Item item,
    Amount amount,
    Handling handling,
    Optional<Item> comesWith,
    NavigableSet<Place> places,
    List<Ground> grounds,
    List<Detail> match) {

  boolean isOrdered() {
    return handling == Handling.ORDER;
  }

  /** The same pieces, called for by more parts. */
  Piece alsoFor(NavigableSet<Place> more, List<Ground> otherGrounds) {
    return new Piece(
        item, amount, handling, comesWith, union(places, more), both(grounds, otherGrounds), match);
  }

  /** These and other pieces of the same item. */
  Piece plus(Piece other) {
    return new Piece(
        item,
        amount.plus(other.amount),
        handling,
        comesWith,
        union(places, other.places),
        both(grounds, other.grounds),
        match);
  }

  /** The same pieces, bought for themselves where what they come with is not bought. */
  Piece apart() {
    return new Piece(item, amount, handling, Optional.empty(), places, grounds, match);
  }

  /** The same pieces with one more reason to count them. */
  Piece confirmed(String why) {
    Amount open = amount.plus(new Amount(0, List.of(why)));
    return new Piece(item, open, handling, comesWith, places, grounds, match);
  }

  private static NavigableSet<Place> union(NavigableSet<Place> some, NavigableSet<Place> more) {
    NavigableSet<Place> all = new TreeSet<>(some);
    all.addAll(more);
    return all;
  }

  private static List<Ground> both(List<Ground> some, List<Ground> more) {
    return Stream.concat(some.stream(), more.stream()).distinct().toList();
  }
}
