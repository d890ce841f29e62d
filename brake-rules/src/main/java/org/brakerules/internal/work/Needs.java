package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Which steps of a plan come before which. What a step that is not in the plan needs is needed by
 * the steps that need it, so that the order holds without it.
 */
final class Needs {

  private final Set<Spot> present;
  private final Map<Spot, Set<Spot>> through = new HashMap<>();

  Needs(Set<Spot> present) {
    this.present = present;
  }

  /** The steps of the plan that a step comes after at once. */
  Set<Spot> of(Spot spot) {
    Set<Spot> known = through.get(spot);
    if (known != null) {
      return known;
    }
    Set<Spot> needs = new LinkedHashSet<>();
    for (Spot need : spot.needs()) {
      if (present.contains(need)) {
        needs.add(need);
      } else {
        needs.addAll(of(need));
      }
    }
    through.put(spot, needs);
    return needs;
  }

  /** Every step of the plan that a step comes after, at once or not. */
  Set<Spot> all(Spot spot) {
    Set<Spot> all = new HashSet<>();
    List<Spot> open = new ArrayList<>(of(spot));
    while (!open.isEmpty()) {
      Spot need = open.remove(open.size() - 1);
      if (all.add(need)) {
        open.addAll(of(need));
      }
    }
    return all;
  }

  /** The steps in one order: of those that nothing keeps waiting, the first by rank. */
  List<Spot> inOrder() {
    Map<Spot, Integer> waiting = new HashMap<>();
    Map<Spot, List<Spot>> after = new HashMap<>();
    PriorityQueue<Spot> ready = new PriorityQueue<>(Spot.ORDER);
    for (Spot spot : present) {
      Set<Spot> needs = of(spot);
      waiting.put(spot, needs.size());
      needs.forEach(need -> after.computeIfAbsent(need, one -> new ArrayList<>()).add(spot));
      if (needs.isEmpty()) {
        ready.add(spot);
      }
    }
    List<Spot> order = new ArrayList<>();
    while (!ready.isEmpty()) {
      Spot next = ready.remove();
      order.add(next);
      for (Spot spot : after.getOrDefault(next, List.of())) {
        if (waiting.merge(spot, -1, Integer::sum) == 0) {
          ready.add(spot);
        }
      }
    }
    return order;
  }

  /** The last of some steps in the order of the table. */
  static Comparator<Spot> byRank() {
    return Comparator.comparing(spot -> spot.row().rank());
  }
}
