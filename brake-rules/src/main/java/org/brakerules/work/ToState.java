package org.brakerules.work;

import java.util.List;
import org.brakerules.model.part.WheelEndPath;

/**
 * Something the job does not say of a brake, though steps of its plan hang on it.
 *
 * @param wheelEnd the wheel end
 * @param fact what is to be stated, such as {@code layout.springBrake}
 * @param steps the numbers of the steps that hang on it
 */
public record ToState(WheelEndPath wheelEnd, String fact, List<Integer> steps) {

  /** Keeps its own copy of the steps. */
  public ToState {
    steps = List.copyOf(steps);
  }
}
