package org.brakerules.model.job;

import java.util.List;
import org.brakerules.model.layout.AxleKind;

/**
 * One axle with the wheel ends that were inspected.
 *
 * @param number counted from the front of its unit, from 1
 * @param kind what the axle does
 * @param wheelEnds one or both wheel ends
 */
public record Axle(int number, AxleKind kind, List<WheelEnd> wheelEnds) {

  /**
   * Keeps its own copy of the wheel ends.
   *
   * @throws IllegalArgumentException if there is none, if one belongs to another axle, or if one is
   *     there twice
   */
  public Axle {
    wheelEnds = List.copyOf(wheelEnds);
    if (wheelEnds.isEmpty()) {
      throw new IllegalArgumentException("Axle " + number + " has no wheel end.");
    }
    for (WheelEnd end : wheelEnds) {
      if (end.path().axle() != number) {
        throw new IllegalArgumentException(end.path() + " does not belong to axle " + number + ".");
      }
    }
    if (wheelEnds.stream().map(WheelEnd::path).distinct().count() < wheelEnds.size()) {
      throw new IllegalArgumentException("A wheel end of axle " + number + " is there twice.");
    }
  }
}
