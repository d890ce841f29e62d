package org.brakerules.benchmark.run;

import java.io.IOException;
import java.nio.file.Path;
import org.brakerules.BrakeRules;
import org.brakerules.benchmark.speed.DemoJobs;
import org.brakerules.model.job.BrakeJob;

/**
 * The heap that the loaded rule base keeps, in a process that does nothing else. It prints the
 * bytes after loading and those after the first decision, which leaves a session of the engine.
 */
final class RetainedHeap {

  static final String LOADED = "heap.loaded";
  static final String DECIDED = "heap.decided";
  private static final int COLLECTIONS = 5;

  private RetainedHeap() {}

  /** Measures it in a process of its own, in bytes. */
  static void run(Path self, Series series) throws IOException, InterruptedException {
    String[] bytes =
        Child.output(Child.java("-cp", self.toString(), RetainedHeap.class.getName()))
            .strip()
            .split(" ", -1);
    series.add(LOADED, Double.parseDouble(bytes[0]));
    series.add(DECIDED, Double.parseDouble(bytes[1]));
  }

  /** Prints it. */
  public static void main(String[] args) throws InterruptedException {
    BrakeJob job = DemoJobs.job("worn-out-wheel-end");
    long before = used();
    BrakeRules rules = BrakeRules.standard();
    long loaded = used();
    int decisions = rules.decide(job).decisions().size();
    long decided = used();
    System.out.println((loaded - before) + " " + (decided - before) + " " + decisions);
  }

  private static long used() throws InterruptedException {
    for (int collection = 0; collection < COLLECTIONS; collection++) {
      System.gc();
      Thread.sleep(COLLECTIONS);
    }
    return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
  }
}
