package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.PointTable;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.NextLook;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;

/**
 * Orders everything still needed over a job: first what can move the decision on most parts, then
 * what can be had without taking more apart, then a look before a measurement.
 *
 * <p>What the brake must be applied for waits. With the drum off it comes last, because the brake
 * must be closed first. While work on any wheel end is on hold it is left out, because air reaches
 * every brake of the vehicle.
 */
public final class WhatNext {

  private record Open(Needed needed, boolean waitsForDrum, List<Place> bearsOn) {}

  private static final Comparator<Open> MOST_FOR_LEAST =
      Comparator.comparing(Open::waitsForDrum)
          .thenComparing(open -> -open.bearsOn().size())
          .thenComparing(open -> open.needed().from())
          .thenComparing(open -> cost(open.needed().task()))
          .thenComparing(open -> open.needed().part());

  private final PointTable points;
  private final Bearings bearings;

  /** Knows the points and what each bears on. */
  public WhatNext(PointTable points, Bearings bearings) {
    this.points = points;
    this.bearings = bearings;
  }

  /**
   * The next looks of a whole job, the most telling first.
   *
   * @param decisions the decisions on all parts of the job
   * @param scope how far the brakes have been taken apart
   */
  public List<NextLook> of(List<Decision> decisions, Scope scope) {
    boolean onHold = decisions.stream().anyMatch(Decision::hold);
    List<Place> undecided =
        decisions.stream()
            .filter(one -> one.disposition() == Disposition.UNDECIDED)
            .map(Decision::part)
            .toList();
    Map<List<Object>, Open> open = new LinkedHashMap<>();
    for (Decision decision : decisions) {
      for (Needed needed : decision.needed()) {
        boolean applied = points.find(needed.point()).filter(Point::appliesBrake).isPresent();
        if (!(applied && onHold)) {
          boolean waits = applied && scope.reaches(Scope.DRUM_OFF);
          open.merge(
              once(needed),
              new Open(needed, waits, bearsOn(needed, undecided)),
              WhatNext::together);
        }
      }
    }
    return open.values().stream()
        .sorted(MOST_FOR_LEAST)
        .map(one -> new NextLook(one.needed().part(), one.needed().point(), one.bearsOn()))
        .toList();
  }

  /** How a brake or a vehicle is built is stated once, whatever parts ask for it. */
  private List<Object> once(Needed needed) {
    return points
        .find(needed.point())
        .filter(point -> !point.ofPart())
        .<List<Object>>map(
            point -> List.of(needed.part().wheelEnd(), point.owner(), point.property().name()))
        .orElseGet(() -> List.of(needed.part(), needed.point()));
  }

  private List<Place> bearsOn(Needed needed, List<Place> undecided) {
    Set<PartKind> kinds = points.find(needed.point()).map(bearings::of).orElse(Set.of());
    List<Place> bearsOn = new ArrayList<>();
    for (Place place : undecided) {
      boolean byRule =
          kinds.contains(place.kind()) && place.wheelEnd().equals(needed.part().wheelEnd());
      if (byRule || isOf(needed, place)) {
        bearsOn.add(place);
      }
    }
    return bearsOn;
  }

  /** The kind is compared first, because most places differ in it. */
  private static boolean isOf(Needed needed, Place place) {
    return place.kind() == needed.part().kind() && place.equals(needed.part());
  }

  private static Open together(Open one, Open other) {
    List<Place> bearsOn = new ArrayList<>(one.bearsOn());
    other.bearsOn().stream().filter(place -> !bearsOn.contains(place)).forEach(bearsOn::add);
    return new Open(one.needed(), one.waitsForDrum(), bearsOn.stream().sorted().toList());
  }

  private static int cost(Needed.Task task) {
    return switch (task) {
      case STATE -> 0;
      case LOOK -> 1;
      case MEASURE -> 2;
    };
  }
}
