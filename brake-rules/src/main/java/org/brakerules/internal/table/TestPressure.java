package org.brakerules.internal.table;

import org.brakerules.model.quantity.Pressure;

/**
 * The reservoir pressure at which a rule set wants applied strokes read, both ends included.
 *
 * @param least the least pressure
 * @param most the highest pressure
 */
public record TestPressure(Pressure least, Pressure most) {

  /** Whether a reading at this pressure counts. */
  public boolean covers(Pressure pressure) {
    return pressure.compareTo(least) >= 0 && pressure.compareTo(most) <= 0;
  }

  /** The pressure in a sentence. */
  public String inWords() {
    return "at a reservoir pressure from " + least + " to " + most;
  }
}
