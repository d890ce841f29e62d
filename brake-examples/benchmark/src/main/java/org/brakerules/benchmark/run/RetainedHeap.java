package org.brakerules.benchmark.run;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.benchmark.speed.DemoJobs;
import org.brakerules.model.job.BrakeJob;

/**
 * The heap that the loaded rule base keeps, in a process that does nothing else. It prints the
 * bytes after loading, those after the first decision, which puts a part of the rules together and
 * leaves a session of the engine, and those after so many that all rules are put together.
 */
final class RetainedHeap {

  static final String LOADED = "heap.loaded";
  static final String DECIDED = "heap.decided";
  static final String WHOLE = "heap.whole";
  private static final int COLLECTIONS = 5;
  private static final int TIMES = 5;

  private RetainedHeap() {}

  /** Measures it in a process of its own, in bytes. */
  static void run(Path self, Series series) throws IOException, InterruptedException {
    String[] bytes =
        Child.output(Child.java("-cp", self.toString(), RetainedHeap.class.getName()))
            .strip()
            .split(" ", -1);
    series.add(LOADED, Double.parseDouble(bytes[0]));
    series.add(DECIDED, Double.parseDouble(bytes[1]));
    series.add(WHOLE, Double.parseDouble(bytes[2]));
  }

  /** Prints it. */
  public static void main(String[] args) throws InterruptedException {
    List<BrakeJob> jobs =
        Stream.of("worn-out-wheel-end", "finished-rebuild", "tractor-and-trailer")
            .map(DemoJobs::job)
            .toList();
    long before = used();
    BrakeRules rules = BrakeRules.standard();
    long loaded = used();
    int decisions = rules.decide(jobs.get(0)).decisions().size();
    long decided = used();
    for (int time = 0; time < TIMES; time++) {
      for (BrakeJob job : jobs) {
        decisions += rules.decide(job).decisions().size();
      }
    }
    long whole = used();
    System.out.printf(
        "%d %d %d %d%n", loaded - before, decided - before, whole - before, decisions);
  }

  private static long used() throws InterruptedException {
    for (int collection = 0; collection < COLLECTIONS; collection++) {
      System.gc();
      Thread.sleep(COLLECTIONS);
    }
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
