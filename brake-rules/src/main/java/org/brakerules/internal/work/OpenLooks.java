package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.NextLook;
import org.brakerules.model.part.Place;
import org.brakerules.work.WorkPhase;

/**
 * What must still be looked at, measured or stated before the undecided parts of a wheel end are
 * decided: now, or not before the work itself or its proof shows it.
 */
final class OpenLooks {

  /** A part that nobody looked at has dozens; its decision lists them all. */
  private static final int LOOKS_SHOWN = 6;

  private final Map<Place, List<Needed>> now = new LinkedHashMap<>();
  private final Map<Place, List<Needed>> later = new LinkedHashMap<>();
  private final Map<Place, Decision> undecided;

  /** The steps that answer a point once the brake is closed, by the point. */
  private final Map<String, Spot> answered = new HashMap<>();

  /** The steps that answer a point before the parts are decided, by the point. */
  private final Map<String, Spot> read = new HashMap<>();

  /**
   * Sorts what is open.
   *
   * @param plan the steps of the wheel end, some of which answer points
   */
  OpenLooks(EndFacts end, List<Spot> plan, JobDecision decision, Tables tables) {
    undecided =
        end.decisions().stream()
            .filter(one -> one.disposition() == Disposition.UNDECIDED && !one.hold())
            .collect(
                Collectors.toMap(
                    Decision::part, one -> one, (first, second) -> first, LinkedHashMap::new));
    for (Spot spot : plan) {
      boolean closed = spot.row().phase().compareTo(WorkPhase.ASSEMBLE) >= 0;
      Map<String, Spot> by = closed ? answered : read;
      spot.row().answers().forEach(point -> by.putIfAbsent(point, spot));
    }
    for (Needed needed : inOrder(decision)) {
      boolean waits = answered.containsKey(needed.point()) || appliesBrake(needed, tables);
      (waits ? later : now).computeIfAbsent(needed.part(), part -> new ArrayList<>()).add(needed);
    }
    undecided.keySet().stream()
        .filter(part -> !now.containsKey(part) && !later.containsKey(part))
        .forEach(part -> now.put(part, List.of()));
  }

  private static boolean appliesBrake(Needed needed, Tables tables) {
    return tables.points().find(needed.point()).filter(Point::appliesBrake).isPresent();
  }

  /** What is open on undecided parts, what bears on most parts first. */
  private List<Needed> inOrder(JobDecision decision) {
    List<Needed> order = new ArrayList<>();
    for (NextLook look : decision.next()) {
      open(look.part()).stream()
          .filter(needed -> needed.point().equals(look.point()))
          .forEach(order::add);
    }
    undecided.keySet().stream()
        .flatMap(part -> open(part).stream())
        .filter(needed -> !order.contains(needed))
        .forEach(order::add);
    return order;
  }

  private List<Needed> open(Place part) {
    Decision decision = undecided.get(part);
    return decision == null ? List.of() : decision.needed();
  }

  /** The parts that are decided before they are fitted. */
  List<Place> partsNow() {
    return List.copyOf(now.keySet());
  }

  /** The parts that only the work or its proof lets decide. */
  List<Place> partsLater() {
    return List.copyOf(later.keySet());
  }

  /**
   * What is to be looked at before the parts are fitted, a line for each part.
   *
   * @param numbers the numbers of the steps, so that what can be read no more names the one at
   *     which it was written down
   */
  List<String> now(Map<Spot, Integer> numbers) {
    return lines(now, numbers);
  }

  /**
   * What the work or its proof shows, a line for each part.
   *
   * @param numbers the numbers of the steps, so that each line names the one that shows it
   */
  List<String> later(Map<Spot, Integer> numbers) {
    return lines(later, numbers);
  }

  private List<String> lines(Map<Place, List<Needed>> open, Map<Spot, Integer> numbers) {
    return open.entrySet().stream()
        .map(entry -> line(entry.getKey(), entry.getValue(), numbers))
        .toList();
  }

  private String line(Place part, List<Needed> needed, Map<Spot, Integer> numbers) {
    String what = needed.isEmpty() ? actions(part) : looks(needed, numbers);
    return "decide " + part.inWords() + ": " + what;
  }

  private String looks(List<Needed> needed, Map<Spot, Integer> numbers) {
    String shown =
        needed.stream()
            .limit(LOOKS_SHOWN)
            .map(one -> inWords(one) + at(one, numbers))
            .collect(Collectors.joining("; "));
    int more = needed.size() - LOOKS_SHOWN;
    return more > 0 ? shown + "; and " + more + " more, listed with its decision" : shown;
  }

  private String at(Needed needed, Map<Spot, Integer> numbers) {
    return at(answered, needed, numbers)
        .map(number -> ", as shown at step " + number)
        .or(() -> at(read, needed, numbers).map(number -> ", as written down at step " + number))
        .orElse("");
  }

  private static Optional<Integer> at(
      Map<String, Spot> steps, Needed needed, Map<Spot, Integer> numbers) {
    return Optional.ofNullable(steps.get(needed.point()))
        .flatMap(spot -> Optional.ofNullable(numbers.get(spot)));
  }

  private String actions(Place part) {
    return Optional.ofNullable(undecided.get(part)).stream()
        .flatMap(decision -> decision.actions().stream())
        .collect(Collectors.joining(" "));
  }

  private static String inWords(Needed needed) {
    return switch (needed.task()) {
      case LOOK -> "look for " + needed.what();
      case MEASURE -> "measure " + needed.what();
      case STATE -> "state " + needed.what();
    };
  }
}
