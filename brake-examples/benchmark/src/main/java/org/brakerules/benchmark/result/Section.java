package org.brakerules.benchmark.result;

import java.util.List;

/**
 * What was measured beside the figures, under one heading.
 *
 * @param title the heading
 * @param note how to read it
 * @param lines one line for each value
 */
public record Section(String title, String note, List<Line> lines) {

  /** Keeps its own copy. */
  public Section {
    lines = List.copyOf(lines);
  }

  /**
   * One value.
   *
   * @param what what it is
   * @param measured the value
   * @param unit its unit; {@code x} for a ratio
   */
  public record Line(String what, Measured measured, String unit) {}
}
