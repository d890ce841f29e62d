package org.brakerules.calc.kit;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is needed.
 *
 * @param required how many of each item must be bought
 * @param welcome how many of each item are of use where a kit happens to bring them, but are not
 *     bought for themselves
 * @param code the code that everything with a code must have; empty if any code will do
 */
public record KitNeed(
    Map<String, Integer> required, Map<String, Integer> welcome, Optional<String> code) {

  /** Keeps its own copies of the maps, in the order of the items. */
  public KitNeed {
    required = Collections.unmodifiableMap(new TreeMap<>(required));
    welcome = Collections.unmodifiableMap(new TreeMap<>(welcome));
  }
}
