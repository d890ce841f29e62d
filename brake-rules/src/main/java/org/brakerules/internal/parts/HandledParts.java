package org.brakerules.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.reading.Station;
import org.brakerules.parts.Ground;
import org.brakerules.parts.Ground.Kind;
import org.brakerules.parts.Handling;

/** What is done with each part of one end of an axle. */
final class HandledParts {

  private static final String MINIMUM_SET = "It belongs to the minimum set of a reline.";
  private static final String WORN_SHOES =
      "It sits on the worn shoes and is needed on the new ones.";
  private static final Ground NOT_INSPECTED =
      new Ground(Kind.NOT_INSPECTED, "partner", "This wheel end is not in the job.");

  private final AxleEnd end;
  private final QuantityTable quantities;
  private final NavigableMap<Place, HandledPart> parts = new TreeMap<>();

  private HandledParts(AxleEnd end, QuantityTable quantities) {
    this.end = end;
    this.quantities = quantities;
  }

  /** Handles an end beside the other end of its axle, if that is in the job. */
  static HandledParts of(AxleEnd end, Optional<AxleEnd> other, PartsTables tables) {
    HandledParts handled = new HandledParts(end, tables.quantities());
    handled.decided();
    other.ifPresent(one -> handled.acrossTheAxle(one, tables.axleSets()));
    if (handled.reline()) {
      tables.quantities().ofReline().forEach(handled::relined);
    }
    tables.usedOnce().entries().forEach(handled::usedOnce);
    return handled;
  }

  AxleEnd end() {
    return end;
  }

  NavigableMap<Place, HandledPart> parts() {
    return parts;
  }

  /** Whether the linings are renewed. */
  boolean reline() {
    return parts.entrySet().stream()
        .filter(
            one -> one.getKey().kind() == PartKind.LINING || one.getKey().kind() == PartKind.SHOE)
        .anyMatch(one -> one.getValue().handling() == Handling.ORDER);
  }

  private void decided() {
    end.decisions().forEach((place, decision) -> parts.put(place, decided(place, decision)));
    if (!end.inspected()) {
      for (Place place : end.expected()) {
        parts.put(
            place, new HandledPart(quantity(place), Handling.INSPECT, List.of(NOT_INSPECTED)));
      }
    }
  }

  private HandledPart decided(Place place, Decision decision) {
    Disposition disposition = decision.disposition();
    Handling handling =
        switch (disposition) {
          case REPLACE -> Handling.ORDER;
          case UNDECIDED -> Handling.INSPECT;
          case REUSE, CLEAN, ADJUST -> Handling.KEEP;
        };
    List<Ground> grounds =
        decision.reasons().stream()
            .filter(reason -> reason.verdict().disposition() == disposition)
            .map(HandledParts::ground)
            .toList();
    return new HandledPart(quantity(place), handling, grounds);
  }

  private static Ground ground(Reason reason) {
    return new Ground(Kind.DECISION, reason.rule(), reason.sentence());
  }

  private void acrossTheAxle(AxleEnd other, AxleSetTable axleSets) {
    List<Decision> across = List.copyOf(other.decisions().values());
    for (AxleSetTable.Entry entry : axleSets.following(across)) {
      parts.replaceAll(
          (place, part) ->
              place.kind() == entry.part() && !end.isNew(place) ? inAxleSet(part, entry) : part);
    }
    if (!end.inspected()) {
      axleSets.besideNew(other).forEach(this::besideNew);
    }
  }

  /** Whether it is renewed here as well nobody stated, so it is looked at and not ordered. */
  private void besideNew(AxleSetTable.Entry entry) {
    parts.replaceAll(
        (place, part) ->
            place.kind() == entry.part() && part.handling() == Handling.INSPECT
                ? part.also(entry.ground())
                : part);
  }

  /** A part that the rules have looked at beside its new partner needs no second look. */
  private static HandledPart inAxleSet(HandledPart part, AxleSetTable.Entry entry) {
    if (!entry.order()) {
      return part.handling() == Handling.INSPECT ? part.also(entry.ground()) : part;
    }
    return part.handling() == Handling.ORDER
        ? part.also(entry.ground())
        : part.instead(Handling.ORDER, entry.ground());
  }

  private void relined(PartKind kind) {
    for (Place place : places(kind)) {
      if (canBeThere(place)) {
        HandledPart part =
            parts.getOrDefault(
                place, new HandledPart(quantity(place), Handling.INSPECT, List.of()));
        parts.put(place, relined(part));
      }
    }
  }

  /** A part that is used once and comes off for the work; a new one if it is fitted already. */
  private void usedOnce(UsedOnceTable.Entry entry) {
    if (end.decisions().values().stream().anyMatch(entry::follows)) {
      parts.replaceAll(
          (place, part) ->
              place.kind() == entry.part() && part.handling() == Handling.KEEP
                  ? usedOnce(place, part, entry.ground())
                  : part);
    }
  }

  private HandledPart usedOnce(Place place, HandledPart part, Ground ground) {
    return end.isNew(place) ? part.again(ground) : part.instead(Handling.ORDER, ground);
  }

  /** Every place a brake can have for the kind, and every further one that was decided on. */
  private NavigableSet<Place> places(PartKind kind) {
    NavigableSet<Place> places = new TreeSet<>();
    for (Station station : kind.stations()) {
      places.add(end.path().place(kind, station));
    }
    parts.keySet().stream().filter(place -> place.kind() == kind).forEach(places::add);
    return places;
  }

  /** A new part that is good stays. A part that only some of these brakes have is asked for. */
  private boolean canBeThere(Place place) {
    if (end.isNotFitted(place) || (end.isNew(place) && !isOrdered(place))) {
      return false;
    }
    Quantity quantity = quantity(place);
    return (quantity.minimumSet() || quantity.salvage())
        && (parts.containsKey(place) || end.expected().contains(place) || !quantity.settled());
  }

  private boolean isOrdered(Place place) {
    HandledPart part = parts.get(place);
    return part != null && part.handling() == Handling.ORDER;
  }

  private static HandledPart relined(HandledPart part) {
    Quantity quantity = part.quantity();
    if (quantity.minimumSet()) {
      Ground ground = new Ground(Kind.MINIMUM_SET, quantity.id(), MINIMUM_SET);
      return part.handling() == Handling.ORDER
          ? part.also(ground)
          : part.instead(Handling.ORDER, ground);
    }
    Ground ground = new Ground(Kind.WORN_SHOES, quantity.id(), WORN_SHOES);
    return part.handling() == Handling.ORDER ? part : saved(part, ground);
  }

  private static HandledPart saved(HandledPart part, Ground ground) {
    List<Ground> grounds = new ArrayList<>(List.of(ground));
    grounds.addAll(part.grounds());
    return new HandledPart(part.quantity(), Handling.SALVAGE, grounds);
  }

  private Quantity quantity(Place place) {
    return quantities.of(end.subject(place));
  }
}
