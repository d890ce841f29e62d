package org.brakerules.internal.parts;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.parts.Amount;
import org.brakerules.parts.Ground;
import org.brakerules.parts.Ground.Kind;
import org.brakerules.parts.Handling;
import org.brakerules.parts.Item;

/** The pieces of one end of an axle, with what new parts need beside them. */
final class Pieces {

  private static final String AS_ACROSS =
      "its wheel end was not inspected, and is taken to be built as the one across the axle";

  private final HandledParts handled;
  private final QuantityTable quantities;
  private final Matching matching;

  /** By the place they are for; small parts that are no part of the model by their item. */
  private final Map<String, Piece> pieces = new LinkedHashMap<>();

  private Pieces(HandledParts handled, QuantityTable quantities, Matching matching) {
    this.handled = handled;
    this.quantities = quantities;
    this.matching = matching;
  }

  /** All pieces of an end. */
  static Collection<Piece> of(HandledParts handled, QuantityTable quantities, Matching matching) {
    Pieces pieces = new Pieces(handled, quantities, matching);
    pieces.ofParts();
    pieces.neededWithNewParts(pieces.neededByDecisions());
    pieces.buyApartWhatComesWithNothing();
    return handled.end().inspected() ? pieces.pieces.values() : pieces.confirmed();
  }

  private void ofParts() {
    handled.parts().forEach((place, part) -> pieces.put(place.toString(), piece(place, part)));
  }

  private Piece piece(Place place, HandledPart part) {
    Quantity quantity = part.quantity();
    return new Piece(
        quantity.item(),
        quantity.amount(),
        part.handling(),
        part.handling() == Handling.ORDER ? quantity.comesWith() : Optional.empty(),
        new TreeSet<>(List.of(place)),
        part.grounds(),
        matching.of(handled.end(), place, part.handling()));
  }

  /**
   * A part that goes back can need a small one for its repair, such as the plugs of its shield, and
   * a new one of another kind what belongs to that kind, such as the link of an automatic adjuster.
   */
  private List<Place> neededByDecisions() {
    List<Place> renewed = new ArrayList<>();
    handled
        .parts()
        .forEach(
            (place, part) ->
                part.grounds().stream()
                    .flatMap(ground -> quantities.neededBy(ground.id()).stream())
                    .distinct()
                    .forEach(needed -> need(place, needed).ifPresent(renewed::add)));
    return renewed;
  }

  private void neededWithNewParts(List<Place> renewed) {
    Deque<Place> ordered = new ArrayDeque<>(renewed);
    handled
        .parts()
        .forEach(
            (place, part) -> {
              if (part.handling() == Handling.ORDER) {
                ordered.add(place);
              }
            });
    while (!ordered.isEmpty()) {
      Place place = ordered.remove();
      for (Quantity needed : quantities.neededWith(handled.end().subject(place))) {
        need(place, renewed.contains(place) ? needed.as(amount(place)) : needed)
            .ifPresent(ordered::add);
      }
    }
  }

  private Amount amount(Place place) {
    return Objects.requireNonNull(pieces.get(place.toString())).amount();
  }

  /** Adds what a new part needs; gives the place of a part that becomes new by it. */
  private Optional<Place> need(Place caller, Quantity needed) {
    Optional<Place> place = needed.item().part().map(kind -> placeOf(needed.item(), kind, caller));
    String key = place.map(Place::toString).orElseGet(needed.item()::id);
    Piece calling = Objects.requireNonNull(pieces.get(caller.toString()));
    List<Ground> grounds = grounds(needed, caller, calling);
    Piece known = pieces.get(key);
    if (known != null && known.isOrdered()) {
      pieces.put(key, known.alsoFor(new TreeSet<>(List.of(caller)), grounds));
      return Optional.empty();
    }
    TreeSet<Place> places = new TreeSet<>(List.of(caller));
    place.ifPresent(places::add);
    pieces.put(
        key,
        new Piece(
            needed.item(),
            needed.amount(),
            Handling.ORDER,
            needed.comesWith(),
            places,
            grounds,
            place.map(one -> matching.of(handled.end(), one, Handling.ORDER)).orElse(List.of())));
    return place;
  }

  private static List<Ground> grounds(Quantity needed, Place caller, Piece calling) {
    String what = calling.isOrdered() ? "with the new " : "for the repair of the ";
    Ground with =
        new Ground(Kind.NEEDED_WITH, needed.id(), "It is needed " + what + caller.inWords() + ".");
    return Stream.concat(Stream.of(with), calling.grounds().stream()).toList();
  }

  /** Where the item belongs: at the station of the part that calls for it, or at its own. */
  private Place placeOf(Item item, PartKind kind, Place caller) {
    if (kind.stations().contains(caller.station())) {
      return caller.wheelEnd().place(kind, caller.station());
    }
    List<Place> places =
        kind.stations().stream().map(station -> caller.wheelEnd().place(kind, station)).toList();
    return places.stream()
        .filter(place -> quantities.of(handled.end().subject(place)).item().equals(item))
        .findFirst()
        .orElse(places.get(0));
  }

  private void buyApartWhatComesWithNothing() {
    List<Item> bought = new ArrayList<>();
    pieces.values().stream().filter(Piece::isOrdered).map(Piece::item).forEach(bought::add);
    pieces.replaceAll(
        (key, piece) ->
            piece.comesWith().filter(item -> !bought.contains(item)).isPresent()
                ? piece.apart()
                : piece);
  }

  private Collection<Piece> confirmed() {
    return pieces.values().stream().map(piece -> piece.confirmed(AS_ACROSS)).toList();
  }
}
