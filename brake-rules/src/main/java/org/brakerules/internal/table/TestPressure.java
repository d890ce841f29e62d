package org.brakerules.internal.table;

import org.brakerules.model.quantity.Pressure;

/**
 * The reservoir pressure at which a rule set wants applied strokes read, both ends included.
 *
 * @param least the least pressure
 * @param most the highest pressure
 * @param inWords the pressure in a sentence
 */
public record TestPressure(Pressure least, Pressure most, String inWords) {

  /** A pressure of which a sentence can be made. */
  public TestPressure(Pressure least, Pressure most) {
    this(least, most, "at a reservoir pressure from " + least + " to " + most);
  }

  /** Whether a reading at this pressure counts. */
  public boolean covers(Pressure pressure) {
    return pressure.compareTo(least) >= 0 && pressure.compareTo(most) <= 0;
  }
}
