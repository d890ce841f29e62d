package org.brakerules.trial;

import java.util.List;

/**
 * What became of the changes of one component.
 *
 * @param component the component
 * @param tried how many changes were made
 * @param refused how many of them no rule base can be made of, as of a limit without a value
 * @param survivors those that no case noticed, in the order of rules and rows
 */
public record MutationResult(String component, int tried, int refused, List<Mutant> survivors) {

  /** Keeps its own copy. */
  public MutationResult {
    survivors = List.copyOf(survivors);
  }
}
