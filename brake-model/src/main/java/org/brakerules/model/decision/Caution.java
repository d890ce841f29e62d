package org.brakerules.model.decision;

import java.util.List;

/**
 * A caution for the work this job implies.
 *
 * @param id the id of the caution
 * @param text the caution
 * @param source where it comes from, one or more
 */
public record Caution(String id, String text, List<Source> source) {

  /** Keeps its own copy of the sources. */
  public Caution {
    source = List.copyOf(source);
  }
}
