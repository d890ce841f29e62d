package org.brakerules.benchmark.result;

import java.util.List;

/**
 * One run of the measurements.
 *
 * @param date the day
 * @param command the command that made it
 * @param rounds how often everything was measured in turn
 * @param caution what a reader must know of the run before believing it; empty if nothing
 * @param ruleBase version and fingerprint of the rule base
 * @param machine where
 * @param figures the figures that have something to reach
 * @param sections everything else
 */
public record Results(
    String date,
    String command,
    int rounds,
    String caution,
    String ruleBase,
    Machine machine,
    List<Figure> figures,
    List<Section> sections) {

  /** Keeps its own copies. */
  public Results {
    figures = List.copyOf(figures);
    sections = List.copyOf(sections);
  }
}
