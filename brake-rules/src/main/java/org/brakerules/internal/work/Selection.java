package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.work.Because;

/** Which steps a plan has, and what put each of them there. */
final class Selection {

  /** Where a step that is in the plan is done, and what put it there. */
  record Chosen(List<Match> matches, List<Because> because, boolean byOtherStep) {}

  private static final Comparator<Spot> ORDER =
      Comparator.comparing((Spot spot) -> spot.row().rank()).thenComparing(Spot::area, Area.ORDER);

  private final Site site;
  private final Map<Spot, Chosen> chosen = new TreeMap<>(ORDER);

  Selection(Site site) {
    this.site = site;
    site.spots().forEach(this::byWorkAndParts);
    boolean more = true;
    while (more) {
      more = false;
      for (Spot spot : site.spots()) {
        more |= !chosen.containsKey(spot) && byOtherStep(spot);
      }
    }
  }

  /** Whether a step is in the plan. */
  boolean has(Spot spot) {
    return chosen.containsKey(spot);
  }

  /** The steps that are in the plan. */
  Set<Spot> spots() {
    return Set.copyOf(chosen.keySet());
  }

  /** The steps that are in the plan, in the order of the table. */
  List<Spot> inOrder() {
    return List.copyOf(chosen.keySet());
  }

  Chosen of(Spot spot) {
    return Optional.ofNullable(chosen.get(spot)).orElseThrow();
  }

  /** The steps of the plan that are done to a wheel end, in the order of the table. */
  List<Spot> of(EndFacts end) {
    return chosen.keySet().stream().filter(spot -> spot.isAt(end.area())).toList();
  }

  /** Adds the steps of a wheel end that something found out about it puts there. */
  void add(EndFacts end, Trigger.Kind kind, String why) {
    for (Spot spot : site.spots()) {
      if (spot.isAt(end.area()) && spot.row().isTriggeredBy(kind)) {
        choose(spot, List.of(Reasoning.of(why)), false);
      }
    }
  }

  private void byWorkAndParts(Spot spot) {
    List<Match> matches = matches(spot);
    List<Because> because = new ArrayList<>();
    for (Match match : matches) {
      because.addAll(Reasoning.byWork(spot.row(), match));
      because.addAll(Reasoning.byParts(spot.row(), match));
    }
    choose(spot, because, false);
  }

  private boolean byOtherStep(Spot spot) {
    return choose(spot, support(spot), true);
  }

  /** The steps of the plan that this one goes with, and those that call for it. */
  private List<Because> support(Spot spot) {
    List<Because> because = new ArrayList<>();
    for (Trigger trigger : spot.row().triggers()) {
      if (trigger.is(Trigger.Kind.WITH_STEP)
          && site.spots(trigger.step(), spot.area()).stream().anyMatch(this::has)) {
        because.add(Reasoning.of("goes with " + trigger.step()));
      }
    }
    chosen.keySet().stream()
        .filter(other -> other.row().callsFor().contains(spot.row().id()))
        .filter(other -> other.area().concerns(spot.area()))
        .map(other -> Reasoning.of(other.row().id() + " calls for it"))
        .forEach(because::add);
    return because;
  }

  private boolean choose(Spot spot, List<Because> because, boolean byOtherStep) {
    List<Match> matches = matches(spot);
    if (matches.isEmpty() || because.isEmpty()) {
      return false;
    }
    List<Because> all = new ArrayList<>(because);
    Reasoning.byLayout(spot.row(), matches).ifPresent(all::add);
    chosen.put(spot, new Chosen(matches, all.stream().distinct().toList(), byOtherStep));
    return true;
  }

  /**
   * Leaves steps out, and with them those that were there only for their sake.
   *
   * @param kept what stays, whatever put it there
   */
  void leaveOut(Predicate<Spot> unwanted, Set<Spot> kept) {
    chosen.keySet().removeIf(unwanted);
    boolean more = true;
    while (more) {
      List<Spot> idle =
          chosen.entrySet().stream()
              .filter(one -> one.getValue().byOtherStep() && !kept.contains(one.getKey()))
              .filter(one -> support(one.getKey()).isEmpty())
              .map(Map.Entry::getKey)
              .toList();
      idle.forEach(chosen::remove);
      more = !idle.isEmpty();
    }
  }

  private List<Match> matches(Spot spot) {
    return site.ends(spot).stream().flatMap(end -> Match.of(spot.row(), end).stream()).toList();
  }

  /** The parts that a step puts in. */
  List<Decision> fitted(Spot spot) {
    return of(spot).matches().stream()
        .flatMap(match -> match.parts().stream())
        .filter(decision -> spot.row().fits().contains(decision.part().kind()))
        .toList();
  }

  /** Whether a step puts in a part that is not decided yet. */
  boolean fitsUndecided(Spot spot) {
    return fitted(spot).stream()
        .anyMatch(decision -> decision.disposition() == Disposition.UNDECIDED);
  }

  /** What the job must state, by wheel end, with the steps that hang on it. */
  Map<EndFacts, Map<String, List<Spot>>> unstated() {
    Map<EndFacts, Map<String, List<Spot>>> unstated = new LinkedHashMap<>();
    for (Map.Entry<Spot, Chosen> entry : chosen.entrySet()) {
      for (Match match : entry.getValue().matches()) {
        for (String fact : match.unstated()) {
          unstated
              .computeIfAbsent(match.end(), end -> new TreeMap<>())
              .computeIfAbsent(fact, one -> new ArrayList<>())
              .add(entry.getKey());
        }
      }
    }
    return unstated;
  }
}
