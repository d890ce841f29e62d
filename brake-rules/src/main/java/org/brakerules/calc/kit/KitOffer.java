package org.brakerules.calc.kit;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/**
 * One kind of kit that can be taken any number of times.
 *
 * @param id its name, told apart from all others
 * @param contents how many of each item it holds
 * @param price what one costs, not below zero; empty if not known
 * @param code what must not be mixed with another code; empty if it goes with every code
 */
public record KitOffer(
    String id, Map<String, Integer> contents, Optional<BigDecimal> price, String code) {

  /** Keeps its own copy of the contents. */
  public KitOffer {
    contents = Map.copyOf(contents);
  }

  int of(String item) {
    return contents.getOrDefault(item, 0);
  }

  int pieces() {
    return contents.values().stream().mapToInt(Integer::intValue).sum();
  }
}
