package org.brakerules.parts;

import java.util.List;

/**
 * The parts list of one axle: both wheel ends together.
 *
 * @param unit the unit of the combination; empty where there is one unit only
 * @param axle the axle counted from the front of its unit
 * @param lines the lines of both wheel ends, put together
 */
public record AxleParts(String unit, int axle, List<TotalLine> lines) {

  /** Keeps its own copy of the list. */
  public AxleParts {
    lines = List.copyOf(lines);
  }

  /** The axle as paths name it, such as {@code tractor/axle2}. */
  public String name() {
    return unit.isEmpty() ? "axle" + axle : unit + "/axle" + axle;
  }
}
