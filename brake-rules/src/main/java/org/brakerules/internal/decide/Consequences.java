package org.brakerules.internal.decide;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.model.part.Place;

/**
 * Keeps reasons from going in a circle: a part is not replaced because another is that is replaced
 * only because of the first.
 */
final class Consequences {

  private final List<Finding> findings;

  Consequences(List<Finding> findings) {
    this.findings = findings;
  }

  /** The findings without those that rest on nothing but themselves. */
  List<Finding> withoutCircles() {
    return findings.stream().filter(this::stands).toList();
  }

  private boolean stands(Finding finding) {
    Set<Place> withoutItself = new HashSet<>(Set.of(finding.part().place()));
    return causes(finding).stream().allMatch(cause -> holds(cause, withoutItself));
  }

  /** Whether a replacement has a reason that needs none of the parts already on the way here. */
  private boolean holds(Replaced cause, Set<Place> onTheWay) {
    return findings.stream()
        .filter(one -> one.marker().filter(cause::equals).isPresent())
        .filter(one -> !onTheWay.contains(one.part().place()))
        .anyMatch(one -> causesHold(one, onTheWay));
  }

  private boolean causesHold(Finding finding, Set<Place> onTheWay) {
    Set<Place> further = new HashSet<>(onTheWay);
    further.add(finding.part().place());
    return causes(finding).stream().allMatch(cause -> holds(cause, further));
  }

  private static List<Replaced> causes(Finding finding) {
    return finding.facts().stream()
        .filter(Replaced.class::isInstance)
        .map(Replaced.class::cast)
        .toList();
  }
}
