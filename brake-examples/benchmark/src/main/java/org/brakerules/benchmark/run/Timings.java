package org.brakerules.benchmark.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * One round of timings of a jar: those of each class in a process of its own, by turns.
 *
 * @param jar the jar with the timings in it
 * @param seconds how many seconds of each are measured, after three times as many to warm up
 */
record Timings(Path jar, int seconds) {

  /**
   * Runs all of them and adds what came out, under names such as {@code
   * WholeAnswer.rules(worn-out-wheel-end)}: the median of the turns, with {@code /bytes} behind it
   * for what was allocated and {@code /99.0} for what 99 % of the decisions stay below.
   *
   * @throws IOException if a timing fails
   */
  void run(Series series) throws IOException, InterruptedException {
    for (String timed : classes()) {
      List<String> command = Child.java("-cp", jar.toString(), Turns.class.getName());
      command.addAll(List.of(timed, String.valueOf(seconds)));
      Child.output(command)
          .lines()
          .filter(line -> line.startsWith(Turns.MARK))
          .map(line -> line.substring(Turns.MARK.length()))
          .forEach(line -> add(line, series));
    }
  }

  private List<String> classes() throws IOException, InterruptedException {
    return Child.output(Child.java("-cp", jar.toString(), "org.openjdk.jmh.Main", "-l"))
        .lines()
        .filter(line -> line.startsWith("org."))
        .map(line -> line.strip().substring(0, line.strip().lastIndexOf('.')))
        .distinct()
        .toList();
  }

  private static void add(String line, Series series) {
    int value = line.lastIndexOf(' ') + 1;
    series.add(line.substring(0, value - 1), Double.parseDouble(line.substring(value)));
  }
}
