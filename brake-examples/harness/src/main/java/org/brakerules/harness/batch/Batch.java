package org.brakerules.harness.batch;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Decides many jobs. One thread reads chunks of lines, hands them to workers, and writes what comes
 * back in the order of the input. Only so many chunks are under way at once, so that the length of
 * the input does not matter.
 */
final class Batch {

  /** Input under way at once, however many threads there are. */
  private static final long MOST_BYTES = 1 << 24;

  /** A chunk under way. */
  private record UnderWay(Future<ChunkResult> result, long bytes) {}

  private final Form form;
  private final Packing packing;
  private final BatchOutput output;
  private final Progress progress;
  private final int mostChunks;
  private final ExecutorService workers;
  private final Deque<UnderWay> window = new ArrayDeque<>();
  private long bytesUnderWay;

  private Batch(Form form, Packing packing, BatchOutput output, Progress progress, int threads) {
    this.form = form;
    this.packing = packing;
    this.output = output;
    this.progress = progress;
    this.mostChunks = mostChunks(threads);
    this.workers = Executors.newFixedThreadPool(threads, Batch::worker);
  }

  /**
   * Decides what the chunks hold.
   *
   * @throws UnreadableInputException if the input breaks off; the whole chunks read of it are
   *     written
   */
  static void run(
      Chunks chunks, Form form, Packing packing, BatchOutput output, Progress progress, int threads)
      throws IOException {
    Batch batch = new Batch(form, packing, output, progress, threads);
    try {
      batch.pass(chunks);
    } finally {
      batch.workers.shutdownNow();
    }
  }

  /** How many chunks may be under way: enough that no thread waits for the one that writes. */
  static int mostChunks(int threads) {
    return 2 * threads + 2;
  }

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "batch worker");
    thread.setDaemon(true);
    return thread;
  }

  /** What is under way when the input fails is written all the same. */
  private void pass(Chunks chunks) throws IOException {
    try {
      Optional<Chunk> next = chunks.next();
      while (next.isPresent()) {
        submit(next.get());
        while (isFull() || isOldestDone()) {
          writeOldest();
        }
        next = chunks.next();
      }
    } catch (UnreadableInputException failure) {
      writeAll();
      throw failure;
    }
    writeAll();
  }

  private void submit(Chunk chunk) {
    Future<ChunkResult> result = workers.submit(() -> ChunkWork.of(chunk, form, packing));
    window.add(new UnderWay(result, chunk.bytes()));
    bytesUnderWay += chunk.bytes();
  }

  private boolean isFull() {
    return window.size() >= mostChunks || (bytesUnderWay > MOST_BYTES && !window.isEmpty());
  }

  private boolean isOldestDone() {
    return !window.isEmpty() && window.element().result().isDone();
  }

  private void writeAll() throws IOException {
    while (!window.isEmpty()) {
      writeOldest();
    }
  }

  private void writeOldest() throws IOException {
    UnderWay oldest = window.remove();
    bytesUnderWay -= oldest.bytes();
    ChunkResult result = resultOf(oldest.result());
    output.append(result);
    progress.at(result.after().lines(), result.position());
  }

  private static ChunkResult resultOf(Future<ChunkResult> future) {
    try {
      return future.get();
    } catch (ExecutionException failure) {
      throw new IllegalStateException(failure.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("The batch was interrupted.", stopped);
    }
  }
}
