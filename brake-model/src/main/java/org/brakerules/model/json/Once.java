package org.brakerules.model.json;

import java.util.HashMap;
import java.util.Map;

/**
 * Refuses the second of two things that go by the same name.
 *
 * @param <K> the name
 */
final class Once<K> {

  private final Problems problems;
  private final Map<K, Spot> firsts = new HashMap<>();

  Once(Problems problems) {
    this.problems = problems;
  }

  /** Notes a problem at the node if the name was there before. */
  void add(K name, Node node, String shown, String expected) {
    Spot first = firsts.putIfAbsent(name, node.spot());
    if (first != null) {
      problems.add(
          node.spot(), "a second " + shown + ", the first is at " + first.inWords(), expected);
    }
  }
}
