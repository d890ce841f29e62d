package org.brakerules.work;

import java.util.List;
import org.brakerules.model.part.WheelEndPath;

/**
 * Why a plan goes no further at one wheel end.
 *
 * @param wheelEnd the wheel end
 * @param step the number of the step at which it stops
 * @param why every reason, in a sentence each
 * @param wayOut how the work can go on: what was found that may be the source, where to look for
 *     it, and what to do then, in a sentence each
 */
public record Stop(WheelEndPath wheelEnd, int step, List<String> why, List<String> wayOut) {

  /** Keeps its own copies of the lists. */
  public Stop {
    why = List.copyOf(why);
    wayOut = List.copyOf(wayOut);
  }
}
