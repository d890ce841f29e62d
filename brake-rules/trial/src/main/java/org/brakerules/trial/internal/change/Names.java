package org.brakerules.trial.internal.change;

import java.util.List;
import java.util.stream.Stream;

/**
 * The names that somebody could take one for another.
 *
 * @param limits the ids of all limits, those of one component together
 * @param points the ids of all inspection points, those of one component together
 */
public record Names(List<String> limits, List<String> points) {

  /** Keeps its own copies. */
  public Names {
    limits = List.copyOf(limits);
    points = List.copyOf(points);
  }

  /** The next limit of the same component; none if it has but one. */
  Stream<String> otherLimits(String id) {
    return next(id, limits);
  }

  /** The next inspection point of the same component; none if it has but one. */
  Stream<String> otherPoints(String id) {
    return next(id, points);
  }

  private static Stream<String> next(String id, List<String> all) {
    String component = component(id);
    List<String> alike = all.stream().filter(one -> component(one).equals(component)).toList();
    int place = alike.indexOf(id);
    return alike.size() < 2 ? Stream.empty() : Stream.of(alike.get((place + 1) % alike.size()));
  }

  private static String component(String id) {
    return id.substring(0, id.indexOf('.'));
  }
}
