package org.brakerules.benchmark.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * One round of timings of a jar: each in a process of its own.
 *
 * @param jar the jar with the timings in it
 * @param seconds how many seconds are measured, after twice as many to warm up
 */
record Timings(Path jar, int seconds) {

  private static final String ALLOCATED = "gc.alloc.rate.norm";

  /**
   * Runs all of them and adds what came out, under names such as {@code
   * WholeAnswer.rules(worn-out-wheel-end)}, with {@code /bytes} behind it for what was allocated
   * and {@code /99.0} for what 99 % of the decisions stay below.
   *
   * @throws IOException if a timing fails
   */
  void run(Series series) throws IOException, InterruptedException {
    Path results = Files.createTempFile("timings", ".json");
    try {
      List<String> command = Child.java("-cp", jar.toString(), "org.openjdk.jmh.Main");
      command.addAll(List.of("-f", "1", "-w", "1", "-r", "1", "-foe", "true", "-prof", "gc"));
      command.addAll(List.of("-wi", String.valueOf(2 * seconds), "-i", String.valueOf(seconds)));
      command.addAll(List.of("-rf", "json", "-rff", results.toString()));
      Child.output(command);
      new ObjectMapper().readTree(results.toFile()).forEach(one -> add(one, series));
    } finally {
      Files.delete(results);
    }
  }

  private static void add(JsonNode timing, Series series) {
    String name = name(timing);
    JsonNode time = timing.path("primaryMetric");
    series.add(name, time.path("score").asDouble());
    timing
        .path("secondaryMetrics")
        .properties()
        .forEach(
            metric -> {
              if (metric.getKey().endsWith(ALLOCATED)) {
                series.add(name + "/bytes", metric.getValue().path("score").asDouble());
              }
            });
    if (timing.path("mode").asText().equals("sample")) {
      time.path("scorePercentiles")
          .properties()
          .forEach(part -> series.add(name + "/" + part.getKey(), part.getValue().asDouble()));
    }
  }

  private static String name(JsonNode timing) {
    String method = timing.path("benchmark").asText();
    int ofClass = method.lastIndexOf('.', method.lastIndexOf('.') - 1) + 1;
    TreeMap<String, String> sorted = new TreeMap<>();
    timing
        .path("params")
        .properties()
        .forEach(one -> sorted.put(one.getKey(), one.getValue().asText()));
    List<String> params = new ArrayList<>(sorted.values());
    return method.substring(ofClass).replace("Benchmark.", ".")
        + (params.isEmpty() ? "" : "(" + String.join(",", params) + ")");
  }
}
