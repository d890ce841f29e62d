package org.brakerules.benchmark.run;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.benchmark.result.Section;

/** What is told beside the figures. */
final class Sections {

  private Sections() {}

  /** All of them, without those of which nothing was measured. */
  static List<Section> all(Series series, RunTimeJars jars, List<Soak.Stage> soaked) {
    return Stream.concat(DecisionSections.of(series), ProcessSections.of(series, jars, soaked))
        .filter(section -> !section.lines().isEmpty())
        .toList();
  }
}
