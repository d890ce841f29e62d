package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Presence;
import org.brakerules.work.WorkPhase;
import org.brakerules.work.WorkStep.Air;

/** At which wheel ends a plan stops, where, why, and what it leaves out for that. */
final class Stops {

  /**
   * A stop of one wheel end.
   *
   * @param end the wheel end
   * @param spot the step at which it stops
   * @param why every reason
   * @param across the other end of the axle, whose stop keeps the axle on its wheels; empty if the
   *     wheel end stops for itself
   */
  record StopAt(EndFacts end, Spot spot, List<String> why, Optional<EndFacts> across) {

    /** Whether it stops while nothing is taken apart, so that what is dangerous is still there. */
    boolean isBeforeTeardown() {
      return spot.row().phase().compareTo(WorkPhase.TEARDOWN) < 0;
    }

    boolean isBeforeAnyJack() {
      return spot.row().phase().compareTo(WorkPhase.SECURE) < 0;
    }
  }

  private final Site site;
  private final StepTable table;
  private final Selection selection;
  private final Map<Area, StopAt> stops = new LinkedHashMap<>();

  Stops(Site site, StepTable table, Selection selection) {
    this.site = site;
    this.table = table;
    this.selection = selection;
    for (EndFacts end : site.ends()) {
      List<EndFacts.Held> held = end.held();
      if (held.isEmpty()) {
        further(end);
      } else {
        hold(end, held);
      }
    }
    all().stream().filter(StopAt::isBeforeAnyJack).forEach(this::keepOnWheels);
  }

  /** Nobody raises an axle, or works beside it, while one end of it stops before any jack. */
  private void keepOnWheels(StopAt stop) {
    site.ends().stream()
        .filter(end -> !end.area().equals(stop.end().area()))
        .filter(end -> end.area().axle() == stop.end().area().axle())
        .filter(end -> at(end).filter(StopAt::isBeforeAnyJack).isEmpty())
        .forEach(end -> stops.put(end.area(), across(stop, end)));
  }

  private Optional<StopAt> at(EndFacts end) {
    return Optional.ofNullable(stops.get(end.area()));
  }

  private StopAt across(StopAt stop, EndFacts end) {
    List<String> why = new ArrayList<>(held(end));
    why.add(
        stop.end().end().path()
            + ", across the axle, is on hold before any jack: the axle stays on its wheels, and"
            + " nothing is done here either");
    Spot spot = own(end, stop.spot().row()).orElse(stop.spot());
    return new StopAt(end, spot, why, Optional.of(stop.end()));
  }

  private static List<String> held(EndFacts end) {
    return end.held().stream().map(EndFacts.Held::inWords).distinct().toList();
  }

  List<StopAt> all() {
    return List.copyOf(stops.values());
  }

  /** The stop at a step; empty if the plan does not stop there. */
  Optional<StopAt> at(Spot spot) {
    return Optional.ofNullable(stops.get(spot.area())).filter(stop -> stop.spot() == spot);
  }

  private void hold(EndFacts end, List<EndFacts.Held> held) {
    selection.add(end, Trigger.Kind.HOLD, "a part of this wheel end is on hold");
    Spot first =
        held.stream()
            .map(one -> table.stopFor(one.reason().rule()))
            .flatMap(row -> own(end, row).stream())
            .min(Needs.byRank())
            .orElseGet(() -> own(end, table.otherwise()).orElseThrow());
    stops.put(end.area(), new StopAt(end, first, held(end), Optional.empty()));
  }

  private Optional<Spot> own(EndFacts end, StepRow row) {
    return selection.of(end).stream().filter(spot -> spot.row().equals(row)).findFirst();
  }

  private void further(EndFacts end) {
    List<String> why = new ArrayList<>();
    if (!end.scope().reaches(end.depth())) {
      why.add(
          "the inspection went as far as "
              + Reasoning.inWords(end.scope())
              + ", and the work goes as far as "
              + Reasoning.inWords(end.depth())
              + " for "
              + deepest(end));
    }
    for (Spot spot : selection.of(end)) {
      end.decisions().stream()
          .filter(decision -> spot.row().disturbs().contains(decision.part().kind()))
          .filter(decision -> isLeftAlone(end, decision))
          .map(decision -> spot.row().id() + " disturbs the " + alone(decision))
          .forEach(why::add);
    }
    if (!why.isEmpty()) {
      selection.add(end, Trigger.Kind.FURTHER, "the work goes further than the inspection");
      Spot stop =
          selection.of(end).stream()
              .filter(spot -> spot.row().isTriggeredBy(Trigger.Kind.FURTHER))
              .findFirst()
              .orElseThrow();
      stops.put(end.area(), new StopAt(end, stop, why, Optional.empty()));
    }
  }

  private String deepest(EndFacts end) {
    return end.decisions().stream()
        .filter(decision -> EndFacts.depth(decision, table) == end.depth())
        .findFirst()
        .map(one -> one.part().inWords() + " (" + String.join(", ", Reasoning.rules(one)) + ")")
        .orElseThrow();
  }

  private static String alone(Decision decision) {
    return decision.part().inWords() + ", which the inspection left alone; state it as disturbed";
  }

  /** What is replaced goes anyway, and what is not decided is asked for anyway. */
  private static boolean isLeftAlone(EndFacts end, Decision decision) {
    Part part = end.inspected(decision.part()).part();
    return part.presence() == Presence.FITTED
        && part.condition() == Condition.AS_FOUND
        && !part.tag().disturbed(end.scope())
        && decision.disposition().compareTo(Disposition.UNDECIDED) < 0;
  }

  /**
   * Leaves out what must not be done: at a wheel end that stops all that does not lead to the stop;
   * while one stops, all that sets or proves a brake of the vehicle; while one is on hold, all air.
   */
  void leaveOut() {
    if (stops.isEmpty()) {
      return;
    }
    Needs needs = new Needs(selection.spots());
    Set<Spot> leadsToStop = new HashSet<>();
    Map<Area, Set<Spot>> before = new LinkedHashMap<>();
    for (StopAt stop : stops.values()) {
      Set<Spot> all = needs.all(stop.spot());
      all.add(stop.spot());
      before.put(stop.end().area(), all);
      leadsToStop.addAll(all);
    }
    selection.leaveOut(
        spot ->
            spot.row().phase().compareTo(WorkPhase.SET) >= 0
                || (spot.row().air() == Air.UP && isAnyOnHold())
                || (isOnlyForStopped(spot) && !isKept(spot, before, leadsToStop)),
        leadsToStop);
  }

  private static boolean isKept(Spot spot, Map<Area, Set<Spot>> before, Set<Spot> leadsToStop) {
    return before.getOrDefault(spot.area(), leadsToStop).contains(spot);
  }

  private boolean isAnyOnHold() {
    return site.ends().stream().flatMap(end -> end.decisions().stream()).anyMatch(Decision::hold);
  }

  private boolean isOnlyForStopped(Spot spot) {
    return site.ends(spot).stream().allMatch(end -> stops.containsKey(end.area()));
  }
}
