package org.brakerules.benchmark.run;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.management.JMException;
import javax.management.ObjectName;
import org.brakerules.BrakeRules;
import org.brakerules.benchmark.speed.DemoJobs;
import org.brakerules.model.job.BrakeJob;

/**
 * Very many decisions in one process, to see whether anything grows. Every tenth of the way it
 * prints the decisions made, the bytes of heap in use after a collection, the threads of the
 * process and the sessions of the engine.
 */
final class Soak {

  private static final int STAGES = 10;
  private static final int THREADS = 2;
  private static final String SESSION = "StatefulKnowledgeSessionImpl";
  private static final BrakeRules RULES = BrakeRules.standard();
  private static final List<BrakeJob> JOBS =
      Stream.of("worn-out-wheel-end", "finished-rebuild", "oil-on-the-lining", "cracked-drum")
          .map(DemoJobs::job)
          .toList();

  private Soak() {}

  /**
   * What was seen at one stage.
   *
   * @param decisions the decisions so far, one for each part
   * @param heap bytes in use
   * @param threads the threads
   * @param sessions the sessions of the engine
   */
  record Stage(long decisions, long heap, int threads, int sessions) {

    private static Stage of(String line) {
      String[] cells = line.split(" ", -1);
      return new Stage(
          Long.parseLong(cells[0]),
          Long.parseLong(cells[1]),
          Integer.parseInt(cells[2]),
          Integer.parseInt(cells[3]));
    }

    @Override
    public String toString() {
      return decisions + " " + heap + " " + threads + " " + sessions;
    }
  }

  /** Soaks in a process of its own. */
  static List<Stage> run(Path self, long decisions) throws IOException, InterruptedException {
    String number = String.valueOf(decisions);
    return Child.output(Child.java("-cp", self.toString(), Soak.class.getName(), number))
        .lines()
        .map(Stage::of)
        .toList();
  }

  /** Soaks, and prints a line for every stage. */
  public static void main(String[] args) throws Exception {
    long wanted = Long.parseLong(args[0]);
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      soak(wanted, threads);
    } finally {
      threads.shutdownNow();
    }
    threads.awaitTermination(1, TimeUnit.MINUTES);
  }

  private static void soak(long wanted, ExecutorService threads) throws Exception {
    long made = 0;
    for (int stage = 1; stage <= STAGES; stage++) {
      long upTo = wanted * stage / STAGES;
      List<Future<Long>> parts = new ArrayList<>();
      for (int thread = 0; thread < THREADS; thread++) {
        long share = (upTo - made) / THREADS;
        parts.add(threads.submit(() -> decide(share)));
      }
      for (Future<Long> part : parts) {
        made += part.get();
      }
      System.out.println(seen(made));
    }
  }

  private static long decide(long wanted) {
    long made = 0;
    for (int next = 0; made < wanted; next++) {
      made += RULES.decide(JOBS.get(next % JOBS.size())).decisions().size();
    }
    return made;
  }

  /** The list of the objects is garbage itself once the sessions are counted. */
  private static Stage seen(long decisions) throws JMException {
    int sessions = sessions();
    System.gc();
    Runtime run = Runtime.getRuntime();
    int threads = ManagementFactory.getThreadMXBean().getThreadCount();
    return new Stage(decisions, run.totalMemory() - run.freeMemory(), threads, sessions);
  }

  private static int sessions() throws JMException {
    String objects =
        (String)
            ManagementFactory.getPlatformMBeanServer()
                .invoke(
                    new ObjectName("com.sun.management:type=DiagnosticCommand"),
                    "gcClassHistogram",
                    new Object[] {new String[0]},
                    new String[] {String[].class.getName()});
    return objects
        .lines()
        .filter(line -> line.endsWith(SESSION) || line.contains(SESSION + " "))
        .mapToInt(line -> Integer.parseInt(line.strip().split("\\s+", -1)[1]))
        .sum();
  }
}
