package org.brakerules.benchmark.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.benchmark.result.Measured;
import org.brakerules.benchmark.result.Section;
import org.brakerules.benchmark.result.Section.Line;

/** What is told beside the figures. */
final class Sections {

  private static final List<String> JOBS =
      List.of("worn-out-wheel-end", "finished-rebuild", "tractor-and-trailer");
  private static final double KILO = 1000;
  private static final double MEGA = 1_000_000;

  private final Series series;
  private final List<Section> sections = new ArrayList<>();

  private Sections(Series series) {
    this.series = series;
  }

  /** All of them, without those of which nothing was measured. */
  static List<Section> all(Series series, List<Soak.Stage> soak) {
    Sections all = new Sections(series);
    all.wholeAnswers();
    all.singleDecisions();
    all.threads();
    all.rules();
    all.wheelEnds();
    all.pipeline();
    all.otherWays();
    all.shims();
    all.start();
    all.memory();
    all.soak(soak);
    return all.sections.stream().filter(section -> !section.lines().isEmpty()).toList();
  }

  private void wholeAnswers() {
    Lines lines = new Lines();
    for (String job : JOBS) {
      for (String way : List.of("rules", "oracle", "json")) {
        String name = "WholeAnswer." + way + "(" + job + ")";
        lines.add(job + ", " + way, series.of(name), "µs");
        lines.add(job + ", " + way + ", allocated", series.of(name + "/bytes", KILO), "kB");
      }
      lines.add(
          job + ", rules against oracle",
          series.ratio("WholeAnswer.rules(" + job + ")", "WholeAnswer.oracle(" + job + ")"),
          "x");
    }
    section(
        "Whole answers",
        "One demo job, decided by the rules, decided by the oracle, and its JSON read and the JSON"
            + " of its answer written. The tractor and its trailer have six wheel ends.",
        lines);
  }

  private void singleDecisions() {
    Lines lines = new Lines();
    for (String part : List.of("50.0", "90.0", "99.0", "99.9", "100.0")) {
      lines.add(part + " % stay below", series.of("Latency.rules/" + part), "µs");
    }
    section("Single decisions", "The worn wheel end, each decision timed by itself.", lines);
  }

  private void threads() {
    Lines lines = new Lines();
    for (String way : List.of("rules", "oracle")) {
      lines.add(way + ", 1 thread", series.of("Threads." + way + "OnOne"), "jobs/s");
      lines.add(way + ", 2 threads", series.of("Threads." + way + "OnTwo"), "jobs/s");
      lines.add(
          way + ", 2 against 1",
          series.ratio("Threads." + way + "OnTwo", "Threads." + way + "OnOne"),
          "x");
    }
    section(
        "Threads",
        "The worn wheel end. The oracle shares nothing between threads: it shows what the machine"
            + " itself gives.",
        lines);
  }

  private void rules() {
    Lines lines = new Lines();
    for (int times : List.of(1, 2, 5, 10)) {
      lines.add(times + " x the rules", series.of("RuleCount.quiet(" + times + ")"), "µs");
    }
    lines.add("10 x, all speaking", series.of("RuleCount.speaking(10)"), "µs");
    lines.add(
        "10 x, all speaking, against 1 x",
        series.ratio("RuleCount.speaking(10)", "RuleCount.quiet(1)"),
        "x");
    section(
        "Number of rules",
        "The worn wheel end by the standard rules and copies of them. A copy asks for one thing"
            + " more of its part, which never holds, as a rule about another brake would. Where all"
            + " speak, copies are like their originals, and the answer has ten times the reasons.",
        lines);
  }

  private void wheelEnds() {
    Lines lines = new Lines();
    for (int ends : List.of(1, 2, 6, 12)) {
      lines.add("of " + ends + ", each", series.of("WheelEnds.rules(" + ends + ")", ends), "µs");
    }
    section("Wheel ends in a job", "All as worn as the first, two on an axle.", lines);
  }

  private void pipeline() {
    Lines lines = new Lines();
    lines.add("rules", series.of("Pipeline.rules"), "jobs/s");
    lines.add("oracle", series.of("Pipeline.oracle"), "jobs/s");
    section(
        "Lines in, lines out",
        "The worn wheel end on 2 threads: JSON read, decided, and the same answer written.",
        lines);
  }

  private void otherWays() {
    Lines lines = new Lines();
    lines.add(
        "a new session of the engine for each job, against kept ones",
        series.ratio("OtherWays.newSessions", "OtherWays.keptSessions"),
        "x");
    lines.add(
        "rule text compiled at start, against the build's",
        series.ratio("OtherWays.compiledAtStart", "OtherWays.keptSessions"),
        "x");
    lines.add(
        "a small rule engine with conditions in Java, against the same rules here",
        series.ratio("CommonSubset.smallEngine", "CommonSubset.rules"),
        "x");
    section("Other ways", "The same rule files and the same answers in other ways.", lines);
  }

  private void shims() {
    Lines lines = new Lines();
    lines.add("the best stack out of 36 shims", series.of("Shim.drawer"), "µs");
    lines.add("every figure of the worn wheel end", series.of("Shim.figures"), "µs");
    section("Shims and figures", "Exact searches.", lines);
  }

  private void start() {
    Lines lines = new Lines();
    lines.add("a bare JVM", series.of(ColdStart.BARE), "ms");
    lines.add(
        "a bare JVM with the flags of the start script",
        series.of(ColdStart.BARE_WITH_FLAGS),
        "ms");
    lines.add("java -jar brake.jar", series.of(ColdStart.JAR), "ms");
    lines.add("the same with the archive of classes", series.of(ColdStart.ARCHIVE), "ms");
    lines.add("the start script", series.of(ColdStart.SCRIPT), "ms");
    section(
        "First decision",
        "Processor time of all threads from the start of Java to its end: the worn wheel end read"
            + " from a file, decided, written as JSON.",
        lines);
  }

  private void memory() {
    Lines lines = new Lines();
    lines.add("loaded", series.of(RetainedHeap.LOADED, MEGA), "MB");
    lines.add("after the first decision", series.of(RetainedHeap.DECIDED, MEGA), "MB");
    section("Heap", "What a collection leaves of the rule base.", lines);
  }

  private void soak(List<Soak.Stage> stages) {
    Lines lines = new Lines();
    for (Soak.Stage stage : stages) {
      String at = "after " + stage.decisions() + " decisions, ";
      lines.add(at + "heap", counted(stage.heap() / MEGA), "MB");
      lines.add(at + "threads", counted(stage.threads()), "");
      lines.add(at + "sessions of the engine", counted(stage.sessions()), "");
    }
    section(
        "Very many decisions in one process",
        "Four demo jobs in turn on 2 threads; a decision is that of one part. The heap is what a"
            + " collection leaves.",
        lines);
  }

  private void section(String title, String note, Lines lines) {
    sections.add(new Section(title, note, lines.all));
  }

  private static Optional<Measured> counted(double value) {
    return Optional.of(Measured.counted(value));
  }

  /** Lines of which something was measured. */
  private static final class Lines {
    private final List<Line> all = new ArrayList<>();

    void add(String what, Optional<Measured> measured, String unit) {
      measured.ifPresent(value -> all.add(new Line(what, value, unit)));
    }
  }
}
