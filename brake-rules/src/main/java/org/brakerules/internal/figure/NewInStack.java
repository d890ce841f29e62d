package org.brakerules.internal.figure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.reading.Station;

/**
 * The new parts whose width changes the end play that was measured with the old ones. The new ring
 * at the spline end is none to measure with: taken off again it is spent, so a trial ring stands in
 * for it until the shims are chosen.
 *
 * @param replaced the parts of one wheel end that are replaced
 */
record NewInStack(Collection<Place> replaced) {

  /** In the order of the shaft, from its head. */
  private static final List<PartKind> KINDS =
      List.of(
          PartKind.CAMSHAFT,
          PartKind.HEAD_WASHER,
          PartKind.SPIDER,
          PartKind.CAMSHAFT_BRACKET,
          PartKind.SPACER,
          PartKind.SLACK_ADJUSTER);

  NewInStack {
    replaced = List.copyOf(replaced);
  }

  /** What to measure with; empty if nothing in the stack is new. */
  Optional<String> inWords() {
    List<String> parts =
        new ArrayList<>(KINDS.stream().filter(this::isNew).map(PartKind::inWords).toList());
    if (isNewRing(Station.HEAD_END)) {
      parts.add("ring at the head end");
    }
    List<String> together = new ArrayList<>();
    if (isNewRing(Station.SPLINE_END)) {
      together.add("the trial ring");
    }
    if (!parts.isEmpty()) {
      together.add("the new " + list(parts));
    }
    return together.isEmpty() ? Optional.empty() : Optional.of(String.join(" and ", together));
  }

  private boolean isNew(PartKind kind) {
    return replaced.stream().anyMatch(place -> place.kind() == kind);
  }

  private boolean isNewRing(Station station) {
    return replaced.stream()
        .anyMatch(place -> place.kind() == PartKind.SNAP_RING && place.station() == station);
  }

  private static String list(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }
}
