package org.brakerules.benchmark.run;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.MultisetStatistics;

/**
 * The timings of one class taken by turns in one process: each for a moment, then the next, and
 * from the start again. A machine that is slow for some seconds is slow for all of them, which
 * timings one after the other would read as a difference between them. It prints each name with
 * what it measured.
 */
final class Turns {

  /** Times a second is divided into: turns shorter than a machine's moods. */
  private static final int IN_A_SECOND = 4;

  private static final int MILLISECONDS = 1000;

  /** Warm-up is this many times as long: the compiler is not done with the rules before. */
  private static final int WARM_UP = 3;

  /** What the lines with a measurement begin with, for a Java may say things of its own. */
  static final String MARK = "timed ";

  private static final String ALLOCATED = "gc.alloc.rate.norm";
  private static final double[] PARTS = {50, 90, 99, 99.9, 100};

  private final Map<String, List<Double>> scores = new TreeMap<>();
  private final Map<String, MultisetStatistics> samples = new TreeMap<>();

  private Turns() {}

  /** Takes turns: the name of the class, and the seconds of each timing. */
  public static void main(String[] args) throws RunnerException {
    Options options =
        new OptionsBuilder()
            .include("^" + Pattern.quote(args[0] + "."))
            .forks(0)
            .warmupIterations(0)
            .measurementIterations(1)
            .measurementTime(TimeValue.milliseconds(MILLISECONDS / IN_A_SECOND))
            .addProfiler(GCProfiler.class)
            .verbosity(VerboseMode.SILENT)
            .shouldFailOnError(true)
            .build();
    int turns = Integer.parseInt(args[1]) * IN_A_SECOND;
    for (int turn = 0; turn < turns * WARM_UP; turn++) {
      new Runner(options).run();
    }
    Turns taken = new Turns();
    for (int turn = 0; turn < turns; turn++) {
      taken.add(new Runner(options).run());
    }
    taken.lines().forEach(System.out::println);
  }

  private void add(Collection<RunResult> turn) {
    for (RunResult one : turn) {
      String name = name(one.getParams());
      Result<?> time = one.getPrimaryResult();
      if (time.getStatistics() instanceof MultisetStatistics many) {
        MultisetStatistics all = samples.computeIfAbsent(name, none -> new MultisetStatistics());
        many.getRawData()
            .forEachRemaining(sample -> all.addValue(sample.getKey(), sample.getValue()));
      }
      add(name, time.getScore());
      one.getSecondaryResults().forEach((metric, value) -> addAllocated(name, metric, value));
    }
  }

  private void addAllocated(String name, String metric, Result<?> value) {
    if (metric.endsWith(ALLOCATED)) {
      add(name + "/bytes", value.getScore());
    }
  }

  private void add(String name, double score) {
    scores.computeIfAbsent(name, none -> new ArrayList<>()).add(score);
  }

  private Stream<String> lines() {
    return Stream.concat(
        scores.entrySet().stream().map(one -> line(one.getKey(), median(one.getValue()))),
        samples.entrySet().stream().flatMap(one -> latencies(one.getKey(), one.getValue())));
  }

  private static Stream<String> latencies(String name, MultisetStatistics measured) {
    return DoubleStream.of(PARTS)
        .mapToObj(part -> line(name + "/" + part, measured.getPercentile(part)));
  }

  private static String line(String name, double value) {
    return MARK + name + " " + value;
  }

  private static double median(List<Double> values) {
    List<Double> sorted = values.stream().sorted().toList();
    int middle = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(middle)
        : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
  }

  /** Such as {@code WholeAnswer.rules(worn-out-wheel-end)}. */
  private static String name(BenchmarkParams timing) {
    String method = timing.getBenchmark();
    int ofClass = method.lastIndexOf('.', method.lastIndexOf('.') - 1) + 1;
    String params =
        timing.getParamsKeys().stream()
            .sorted()
            .map(timing::getParam)
            .collect(Collectors.joining(","));
    return method.substring(ofClass).replace("Benchmark.", ".")
        + (params.isEmpty() ? "" : "(" + params + ")");
  }
}
