package org.brakerules.work;

import java.util.List;
import org.brakerules.model.part.WheelEndPath;

/**
 * Why a plan goes no further at one wheel end.
 *
 * @param wheelEnd the wheel end
 * @param step the number of the step at which it stops
 * @param why every reason, in a sentence each
 */
public record Stop(WheelEndPath wheelEnd, int step, List<String> why) {

  /** Keeps its own copy of the reasons. */
  public Stop {
    why = List.copyOf(why);
  }
}
