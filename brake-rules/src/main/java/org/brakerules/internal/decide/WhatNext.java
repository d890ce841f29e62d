package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.PointTable;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.NextLook;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.WheelEndPath;

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

  /**
   * Where something is asked for once.
   *
   * @param wheelEnd the wheel end
   * @param owner the part, or what has the property where that is the brake or the vehicle
   * @param name the point, or the property
   */
  private record Question(WheelEndPath wheelEnd, Object owner, String name) {}

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
    Map<WheelEndPath, List<Place>> undecided = new HashMap<>();
    boolean onHold = false;
    for (Decision decision : decisions) {
      onHold |= decision.hold();
      if (decision.disposition() == Disposition.UNDECIDED) {
        undecided
            .computeIfAbsent(decision.part().wheelEnd(), end -> new ArrayList<>())
            .add(decision.part());
      }
    }
    return inOrder(open(decisions, scope, onHold, undecided));
  }

  private Collection<Open> open(
      List<Decision> decisions,
      Scope scope,
      boolean onHold,
      Map<WheelEndPath, List<Place>> undecided) {
    Map<Question, Open> open = new LinkedHashMap<>();
    for (Decision decision : decisions) {
      for (Needed needed : decision.needed()) {
        Optional<Point> point = points.find(needed.point());
        boolean applied = point.isPresent() && point.get().appliesBrake();
        if (!(applied && onHold)) {
          boolean waits = applied && scope.reaches(Scope.DRUM_OFF);
          List<Place> ofEnd = undecided.getOrDefault(needed.part().wheelEnd(), List.of());
          open.merge(
              once(needed, point),
              new Open(needed, waits, bearsOn(needed, point, ofEnd)),
              WhatNext::together);
        }
      }
    }
    return open.values();
  }

  private static List<NextLook> inOrder(Collection<Open> open) {
    List<Open> sorted = new ArrayList<>(open);
    sorted.sort(MOST_FOR_LEAST);
    List<NextLook> next = new ArrayList<>(sorted.size());
    for (Open one : sorted) {
      next.add(new NextLook(one.needed().part(), one.needed().point(), one.bearsOn()));
    }
    return next;
  }

  /** How a brake or a vehicle is built is stated once, whatever parts ask for it. */
  private static Question once(Needed needed, Optional<Point> point) {
    Place part = needed.part();
    return point
        .filter(one -> !one.ofPart())
        .map(one -> new Question(part.wheelEnd(), one.owner(), one.property().name()))
        .orElseGet(() -> new Question(part.wheelEnd(), part, needed.point()));
  }

  private List<Place> bearsOn(Needed needed, Optional<Point> point, List<Place> undecided) {
    Set<PartKind> kinds = point.map(bearings::of).orElse(Set.of());
    List<Place> bearsOn = new ArrayList<>();
    for (Place place : undecided) {
      if (kinds.contains(place.kind()) || isOf(needed, place)) {
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
    Set<Place> bearsOn = new TreeSet<>(one.bearsOn());
    bearsOn.addAll(other.bearsOn());
    return new Open(one.needed(), one.waitsForDrum(), List.copyOf(bearsOn));
  }

  private static int cost(Needed.Task task) {
    return switch (task) {
      case STATE -> 0;
      case LOOK -> 1;
      case MEASURE -> 2;
    };
  }
}
