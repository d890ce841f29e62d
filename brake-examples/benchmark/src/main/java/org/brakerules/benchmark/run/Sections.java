package org.brakerules.benchmark.run;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.benchmark.Agreement;
import org.brakerules.benchmark.result.Section;

/** What is told beside the figures. */
final class Sections {

  private Sections() {}

  /** All of them, without those of which nothing was measured. */
  static List<Section> all(
      Series series, RunTimeJars jars, List<Soak.Stage> soaked, Agreement.Outcome agreed) {
    Stream<Section> ofDecisions =
        Stream.concat(DecisionSections.of(series), Stream.of(agreement(agreed)));
    return Stream.concat(ofDecisions, ProcessSections.of(series, jars, soaked))
        .filter(section -> !section.lines().isEmpty())
        .toList();
  }

  private static Section agreement(Agreement.Outcome agreed) {
    Lines lines = new Lines();
    lines.count("random jobs", (double) agreed.jobs(), "");
    lines.count("parts decided", (double) agreed.decisions(), "");
    lines.count("differences", (double) agreed.disagreements(), "");
    return lines.under(
        "Rules and oracle",
        "Random jobs from the first seed on, on "
            + Measurement.MANY_THREADS
            + " threads; disposition, hold, rules, checks with their margins and open points of each"
            + " part compared.");
  }
}
