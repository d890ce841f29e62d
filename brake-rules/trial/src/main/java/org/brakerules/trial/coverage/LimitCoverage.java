package org.brakerules.trial.coverage;

import java.util.List;

/**
 * What the cases show of one row of a table of limits.
 *
 * @param id the id of the limit, and what tells the row from others of the same id
 * @param component the component whose table it stands in
 * @param passes on which side of what a reading passes, such as {@code at most 0.020 in}
 * @param applies the cases with a part that the row is for, those of its component first
 * @param sides the sides there are
 */
public record LimitCoverage(
    String id, String component, String passes, List<CaseName> applies, List<SideCoverage> sides) {

  /** Keeps its own copies of the lists. */
  public LimitCoverage {
    applies = List.copyOf(applies);
    sides = List.copyOf(sides);
  }
}
