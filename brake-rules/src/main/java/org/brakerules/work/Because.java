package org.brakerules.work;

import java.util.List;
import java.util.Optional;
import org.brakerules.model.part.Place;

/**
 * What put a step into a plan.
 *
 * @param part the part whose decision it was; empty if it was no decision on a part
 * @param words what it was, such as {@code is replaced} or {@code always, from shoes off on}
 * @param rules the ids of the rules that decided on the part; empty without a part
 */
public record Because(Optional<Place> part, String words, List<String> rules) {

  /** Keeps its own copy of the rules. */
  public Because {
    rules = List.copyOf(rules);
  }
}
