package org.brakerules.calc.kit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * The kits to take.
 *
 * @param counts how many of each kit, by its id, in the order offered; none with a zero
 * @param loose how many of each required item no kit brings
 * @param welcomed how many of each welcome item the kits bring and are of use
 * @param leftOver how many of each item the kits bring and are of no use
 * @param code the code of the kits that have one; empty if none has
 * @param goodness how good the choice is
 * @param exact whether no better choice exists; if not, a better one was not searched for to the
 *     end
 */
public record KitChoice(
    Map<String, Integer> counts,
    Map<String, Integer> loose,
    Map<String, Integer> welcomed,
    Map<String, Integer> leftOver,
    String code,
    Goodness goodness,
    boolean exact) {

  /** Keeps its own copies of the maps. */
  public KitChoice {
    counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    loose = Collections.unmodifiableMap(new TreeMap<>(loose));
    welcomed = Collections.unmodifiableMap(new TreeMap<>(welcomed));
    leftOver = Collections.unmodifiableMap(new TreeMap<>(leftOver));
  }
}
