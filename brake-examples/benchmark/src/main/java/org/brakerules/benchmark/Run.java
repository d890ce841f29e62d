package org.brakerules.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongConsumer;
import org.brakerules.random.RandomJobs;

/** Compares the random jobs of a row of seeds, on so many threads. */
final class Run {

  private static final int BLOCK = 100;

  private final long firstSeed;
  private final long jobs;
  private final LongConsumer progress;
  private final AtomicLong next = new AtomicLong();
  private final AtomicLong done = new AtomicLong();

  /**
   * Prepares a run.
   *
   * @param progress hears of the number of jobs done, from any thread
   */
  Run(long firstSeed, long jobs, LongConsumer progress) {
    this.firstSeed = firstSeed;
    this.jobs = jobs;
    this.progress = progress;
  }

  /** Compares all of them. */
  Tally on(int threads) {
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Tally>> parts = new ArrayList<>();
      for (int i = 0; i < threads; i++) {
        parts.add(workers.submit(this::work));
      }
      Tally all = new Tally();
      for (Future<Tally> part : parts) {
        all.add(part.get());
      }
      return all;
    } catch (InterruptedException e) {
      throw new IllegalStateException("The comparison was interrupted.", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("The comparison of a job failed.", e.getCause());
    } finally {
      workers.shutdownNow();
    }
  }

  private Tally work() {
    Tally tally = new Tally();
    for (long from = next.getAndAdd(BLOCK);
        from < jobs && !isStopped();
        from = next.getAndAdd(BLOCK)) {
      long to = Math.min(from + BLOCK, jobs);
      for (long i = from; i < to; i++) {
        tally.add(firstSeed + i, compare(firstSeed + i));
      }
      progress.accept(done.addAndGet(to - from));
    }
    return tally;
  }

  /** Once a job has failed the others are of no use. */
  private static boolean isStopped() {
    return Thread.currentThread().isInterrupted();
  }

  private static Comparison compare(long seed) {
    try {
      return Comparison.of(RandomJobs.of(seed));
    } catch (RuntimeException e) {
      throw new IllegalStateException("The job of seed " + seed + " cannot be compared.", e);
    }
  }
}
