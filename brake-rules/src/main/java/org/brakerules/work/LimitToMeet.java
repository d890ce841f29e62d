package org.brakerules.work;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;

/**
 * A limit that a reading written down at a step meets, with what makes it a reading of this limit.
 *
 * @param limit the limit in force
 * @param otherwise what a reading on its wrong side means, where several limits meet one reading;
 *     else empty
 * @param at where the reading is taken; empty if the part itself says where
 * @param methods the methods that count; empty if any does
 * @param pressure at which pressure it counts, in words; empty if at any
 */
public record LimitToMeet(
    LimitInForce limit,
    String otherwise,
    Optional<Station> at,
    List<Method> methods,
    Optional<String> pressure) {

  /** Keeps its own copy of the methods. */
  public LimitToMeet {
    methods = List.copyOf(methods);
  }

  /**
   * The limit with its place and its meaning, such as {@code at least 1/4 in at the shoe centre}.
   */
  public String inWords() {
    return limit.inWords()
        + at.map(station -> " at the " + station.inWords()).orElse("")
        + (otherwise.isEmpty() ? "" : ", else " + otherwise);
  }
}
