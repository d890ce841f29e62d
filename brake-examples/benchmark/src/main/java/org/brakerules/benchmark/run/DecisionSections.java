package org.brakerules.benchmark.run;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.benchmark.result.Section;

/** What decisions cost, beside the figures. */
final class DecisionSections {

  private static final List<String> JOBS =
      List.of("worn-out-wheel-end", "finished-rebuild", "tractor-and-trailer");
  private static final double KILO = 1000;

  private final Series series;

  private DecisionSections(Series series) {
    this.series = series;
  }

  static Stream<Section> of(Series series) {
    DecisionSections all = new DecisionSections(series);
    return Stream.of(
        all.wholeAnswers(),
        all.singleDecisions(),
        all.threads(),
        all.rules(),
        all.wheelEnds(),
        all.pipeline(),
        all.otherWays(),
        all.shims());
  }

  private Section wholeAnswers() {
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
    return lines.under(
        "Whole answers",
        "One demo job, decided by the rules, decided by the oracle, and its JSON read and the JSON"
            + " of its answer written. The oracle gives dispositions, holds, reasons, checks and open"
            + " points; it leaves out sentences, evidence, road answers, the order of the looks and"
            + " cautions. The tractor and its trailer have six wheel ends.");
  }

  private Section singleDecisions() {
    Lines lines = new Lines();
    for (String part : List.of("50.0", "90.0", "99.0", "99.9", "100.0")) {
      lines.add(part + " % stay below", series.of("Latency.rules/" + part), "µs");
    }
    return lines.under("Single decisions", "The worn wheel end, each decision timed by itself.");
  }

  private Section threads() {
    Lines lines = new Lines();
    for (String way : List.of("rules", "oracle", "counting")) {
      lines.add(way + ", 1 thread", series.of("Threads." + way + "OnOne"), "in a second");
      lines.add(way + ", 2 threads", series.of("Threads." + way + "OnTwo"), "in a second");
      lines.add(
          way + ", 2 against 1",
          series.ratio("Threads." + way + "OnTwo", "Threads." + way + "OnOne"),
          "x");
    }
    return lines.under(
        "Threads",
        "Jobs with the worn wheel end. The oracle shares nothing between threads, and counting"
            + " touches no memory: what they do not gain the machine does not give.");
  }

  private Section rules() {
    Lines lines = new Lines();
    for (int times : List.of(1, 2, 5, 10)) {
      lines.add(times + " x the rules", series.of("RuleCount.quiet(" + times + ")"), "µs");
    }
    lines.add("10 x, all speaking", series.of("RuleCount.speaking(10)"), "µs");
    lines.add(
        "10 x, all speaking, against 1 x",
        series.ratio("RuleCount.speaking(10)", "RuleCount.quiet(1)"),
        "x");
    return lines.under(
        "Number of rules",
        "The worn wheel end by the standard rules and copies of them. A copy asks for one thing"
            + " more of its part, which never holds, as a rule about another brake would. Where all"
            + " speak, copies are like their originals, and the answer has ten times the reasons.");
  }

  private Section wheelEnds() {
    Lines lines = new Lines();
    for (int ends : List.of(1, 2, 6, 12)) {
      lines.add("of " + ends + ", each", series.of("WheelEnds.rules(" + ends + ")", ends), "µs");
    }
    return lines.under("Wheel ends in a job", "All as worn as the first, two on an axle.");
  }

  private Section pipeline() {
    Lines lines = new Lines();
    lines.add("rules", series.of("Pipeline.rules"), "jobs/s");
    lines.add("oracle", series.of("Pipeline.oracle"), "jobs/s");
    return lines.under(
        "Lines in, lines out",
        "The worn wheel end on 2 threads: JSON read, decided, and the same answer written.");
  }

  private Section otherWays() {
    Lines lines = new Lines();
    lines.add(
        "a new session of the engine for each job, told of every fact, against kept ones",
        series.ratio("OtherWays.newSessions", "OtherWays.keptSessions"),
        "x");
    lines.add(
        "rule text compiled at start, told of every fact, against the build's",
        series.ratio("OtherWays.compiledAtStart", "OtherWays.keptSessions"),
        "x");
    lines.add(
        "28 rules on camshaft and cam roller by hand in a small engine, against the same rules here",
        series.ratio("CommonSubset.smallEngine", "CommonSubset.rules"),
        "x");
    return lines.under(
        "Other ways",
        "The worn wheel end with the same answer in other ways; here facts that cannot matter are"
            + " kept back.");
  }

  private Section shims() {
    Lines lines = new Lines();
    lines.add("the best stack out of 36 shims", series.of("Shim.drawer"), "µs");
    lines.add("every figure of the worn wheel end", series.of("Shim.figures"), "µs");
    return lines.under("Shims and figures", "Exact searches.");
  }
}
