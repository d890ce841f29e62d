package org.brakerules.benchmark.run;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.benchmark.result.Section;

/** What starting, loading and running for long cost, beside the figures. */
final class ProcessSections {

  private static final double MEGA = 1_000_000;

  private final Series series;

  private ProcessSections(Series series) {
    this.series = series;
  }

  static Stream<Section> of(Series series, RunTimeJars jars, List<Soak.Stage> soaked) {
    ProcessSections all = new ProcessSections(series);
    return Stream.of(all.start(), all.memory(), runTime(jars), soak(soaked));
  }

  private Section start() {
    Lines lines = new Lines();
    lines.add("a bare JVM", series.of(ColdStart.BARE), "ms");
    lines.add(
        "a bare JVM with the flags of the start script",
        series.of(ColdStart.BARE_WITH_FLAGS),
        "ms");
    lines.add("java -jar brake.jar", series.of(ColdStart.JAR), "ms");
    lines.add(
        "the same with the archive of classes, at whatever address Java puts it",
        series.of(ColdStart.ARCHIVE),
        "ms");
    lines.add("the start script", series.of(ColdStart.SCRIPT), "ms");
    return lines.under(
        "First decision",
        "Processor time of all threads from the start of Java to its end: the worn wheel end read"
            + " from a file, decided, written as JSON.");
  }

  private Section memory() {
    Lines lines = new Lines();
    lines.add("loaded", series.of(RetainedHeap.LOADED, MEGA), "MB");
    lines.add("after the first decision", series.of(RetainedHeap.DECIDED, MEGA), "MB");
    lines.add("with all rules put together", series.of(RetainedHeap.WHOLE, MEGA), "MB");
    return lines.under(
        "Heap",
        "What a collection leaves of the rule base. The first decision puts together the rules at"
            + " stake in its job, later ones all of them.");
  }

  private static Section runTime(RunTimeJars jars) {
    Lines lines = new Lines();
    if (jars.count() > 0) {
      lines.count("jars", jars.count(), "");
      lines.count("together", jars.bytes() / MEGA, "MB");
    }
    return lines.under(
        "Run time", "What a program that uses the rules takes along, the rules included.");
  }

  private static Section soak(List<Soak.Stage> stages) {
    Lines lines = new Lines();
    for (Soak.Stage stage : stages) {
      lines.count("heap after " + stage.decisions() + " decisions", stage.heap() / MEGA, "MB");
    }
    Soak.Stage first = stages.get(0);
    Soak.Stage last = stages.get(stages.size() - 1);
    lines.count("threads after the first tenth", first.threads(), "");
    lines.count("threads at the end", last.threads(), "");
    lines.count("sessions of the engine after the first tenth", first.sessions(), "");
    lines.count("sessions of the engine at the end", last.sessions(), "");
    return lines.under(
        "Very many decisions in one process",
        "Four demo jobs in turn on 2 threads; a decision is that of one part. The heap is what a"
            + " collection leaves.");
  }
}
