package org.brakerules.model.decision;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;

/**
 * Something that must still be looked at, measured or stated before a part can be decided.
 *
 * @param part the part
 * @param point the id of the inspection point, such as {@code camshaft-bushing.radial-play}
 * @param task what is to be done
 * @param what what to look for or measure, as a noun phrase
 * @param why why it is needed now: missing, taken another way, unproven, or asked for by a rule
 * @param instrument what to look or measure with
 * @param how how to do it, with the direction
 * @param station where; {@link Station#WHOLE_PART} if it is the part as a whole
 * @param methods the methods the limit accepts; empty if it is a look
 * @param conditions under which conditions the reading counts, each as the end of a sentence, such
 *     as {@code before anything is pumped, turned or taken apart}
 * @param limits the limits the reading will meet; empty if it is a look
 * @param from the scope from which on it can be done
 */
public record Needed(
    Place part,
    String point,
    Task task,
    String what,
    String why,
    String instrument,
    String how,
    Station station,
    List<Method> methods,
    List<String> conditions,
    List<LimitInForce> limits,
    Scope from) {

  /** What is to be done. */
  public enum Task {
    /** Look at it. */
    LOOK,
    /** Measure it. */
    MEASURE,
    /** State how the brake is built. */
    STATE
  }

  /** Keeps its own copies of the lists. */
  public Needed {
    methods = List.copyOf(methods);
    conditions = List.copyOf(conditions);
    limits = List.copyOf(limits);
  }

  /** The first limit the reading will meet, if any. */
  public Optional<LimitInForce> limit() {
    return limits.stream().findFirst();
  }
}
