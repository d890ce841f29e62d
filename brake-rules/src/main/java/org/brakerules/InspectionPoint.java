package org.brakerules;

import java.util.List;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Needed.Task;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;

/**
 * Something a decision will ask for, known before anything is inspected. A program builds its form
 * from these.
 *
 * @param id the id of the point, such as {@code camshaft-bushing.radial-play}
 * @param part the kind of part
 * @param station the station of the part
 * @param task whether to look, to measure, or to state how the brake is built
 * @param property the property to fill in, such as {@code radialPlay}
 * @param what what to look for or measure, as a noun phrase
 * @param at where the reading is taken
 * @param methods the methods the limit accepts; empty if it is a look
 * @param conditions under which conditions the reading counts, each as the end of a sentence
 * @param instrument what to look or measure with
 * @param how how to do it, with the direction
 * @param from the scope from which on it is needed
 * @param limits the limits the reading will meet
 */
public record InspectionPoint(
    String id,
    PartKind part,
    Station station,
    Task task,
    String property,
    String what,
    Station at,
    List<Method> methods,
    List<String> conditions,
    String instrument,
    String how,
    Scope from,
    List<LimitInForce> limits) {

  /** Keeps its own copies of the lists. */
  public InspectionPoint {
    methods = List.copyOf(methods);
    conditions = List.copyOf(conditions);
    limits = List.copyOf(limits);
  }
}
