package org.brakerules.harness.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/** A batch in a process of its own, slow enough to be killed in the middle. */
final class SlowBatch {

  private static final Duration PAUSE = Duration.ofMillis(15);

  private SlowBatch() {}

  /**
   * Runs it.
   *
   * @param args the folder of its files, their ending, and the file with the jobs
   */
  public static void main(String[] args) throws IOException {
    SmallBatch batch =
        new SmallBatch(Path.of(args[0]), args[1], Files.readString(Path.of(args[2])));
    System.out.println("ready");
    batch.run(new RealDisk(), (lines, position) -> rest(), PAUSE);
  }

  private static void rest() {
    try {
      Thread.sleep(8);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
