package org.brakerules.work;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.model.reading.Method;

/**
 * Something to write down at a step.
 *
 * @param what what it is, such as {@code free stroke as found}
 * @param readings how many readings it is, from 1
 * @param limits the limits in force that the reading meets; empty if there are none
 * @param makersFigure whether the figure to meet is the maker's, and is not known here
 */
public record Recording(String what, int readings, List<LimitToMeet> limits, boolean makersFigure) {

  /** Keeps its own copy of the limits. */
  public Recording {
    limits = List.copyOf(limits);
  }

  /**
   * The limits with the place, the method and the pressure at which a reading counts, such as
   * {@code at most 2 in; full application, at a reservoir pressure from 80 psi to 90 psi}; empty if
   * there are none.
   */
  public String limitsInWords() {
    String values =
        limits.stream().map(LimitToMeet::inWords).distinct().collect(Collectors.joining("; "));
    List<String> ways =
        limits.stream().map(Recording::way).filter(way -> !way.isEmpty()).distinct().toList();
    return ways.isEmpty() ? values : values + "; " + String.join("; ", ways);
  }

  private static String way(LimitToMeet limit) {
    String methods =
        limit.methods().stream().map(Method::inWords).collect(Collectors.joining(" or "));
    Optional<String> pressure = limit.pressure();
    return methods + pressure.map(one -> ", " + one).orElse("");
  }
}
