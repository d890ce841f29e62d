package org.brakerules.work;

import java.util.List;
import org.brakerules.model.decision.LimitInForce;

/**
 * Something to write down at a step.
 *
 * @param what what it is, such as {@code free stroke as found}
 * @param limits the limits in force that the reading meets; empty if there are none
 * @param makersFigure whether the figure to meet is the maker's, and is not known here
 */
public record Recording(String what, List<LimitInForce> limits, boolean makersFigure) {

  /** Keeps its own copy of the limits. */
  public Recording {
    limits = List.copyOf(limits);
  }
}
