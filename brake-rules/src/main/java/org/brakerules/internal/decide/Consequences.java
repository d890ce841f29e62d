package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.model.part.Place;

/**
 * Keeps reasons from going in a circle: a part is not replaced because another is that is replaced
 * only because of the first.
 */
final class Consequences {

  /**
   * A finding with what makes it part of a circle.
   *
   * @param finding the finding
   * @param causes the replacements it rests on
   */
  private record Link(Finding finding, List<Replaced> causes) {

    static Link of(Finding finding) {
      List<Replaced> causes = List.of();
      for (Object fact : finding.facts()) {
        if (fact instanceof Replaced replaced) {
          causes = causes.isEmpty() ? new ArrayList<>() : causes;
          causes.add(replaced);
        }
      }
      return new Link(finding, causes);
    }

    Place place() {
      return finding.part().place();
    }
  }

  private final List<Link> links;
  private final Map<Replaced, List<Link>> replacing = new HashMap<>();

  Consequences(List<Finding> findings) {
    links = findings.stream().map(Link::of).toList();
    for (Link link : links) {
      link.finding()
          .marker()
          .ifPresent(
              marker -> replacing.computeIfAbsent(marker, one -> new ArrayList<>()).add(link));
    }
  }

  /** The findings without those that rest on nothing but themselves. */
  List<Finding> withoutCircles() {
    return links.stream().filter(this::stands).map(Link::finding).toList();
  }

  private boolean stands(Link link) {
    return causesHold(link, Optional.empty());
  }

  /** Whether a replacement has a reason that needs none of the parts already on the way here. */
  private boolean holds(Replaced cause, Way way) {
    for (Link link : replacing.getOrDefault(cause, List.of())) {
      if (!way.leadsOver(link.place()) && causesHold(link, Optional.of(way))) {
        return true;
      }
    }
    return false;
  }

  private boolean causesHold(Link link, Optional<Way> before) {
    if (link.causes().isEmpty()) {
      return true;
    }
    Way way = new Way(link.place(), before);
    for (Replaced cause : link.causes()) {
      if (!holds(cause, way)) {
        return false;
      }
    }
    return true;
  }

  /**
   * The parts between a finding and the reason that is looked for; mostly one or two.
   *
   * @param last the part reached last
   * @param before the way to it
   */
  private record Way(Place last, Optional<Way> before) {

    boolean leadsOver(Place place) {
      return last.equals(place) || (before.isPresent() && before.get().leadsOver(place));
    }
  }
}
