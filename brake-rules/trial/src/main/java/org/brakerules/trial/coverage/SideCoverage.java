package org.brakerules.trial.coverage;

import java.util.List;

/**
 * What shows one side of a limit.
 *
 * @param side the side
 * @param cases the cases that show it, those of its component first
 * @param made how many jobs that the program made for the row show it
 */
public record SideCoverage(Side side, List<CaseName> cases, int made) {

  /** Keeps its own copy of the cases. */
  public SideCoverage {
    cases = List.copyOf(cases);
  }

  /** Whether anything shows it. */
  public boolean isShown() {
    return !cases.isEmpty() || made > 0;
  }
}
