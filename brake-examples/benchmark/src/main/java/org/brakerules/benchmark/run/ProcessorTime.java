package org.brakerules.benchmark.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The processor time of ended child processes, as Linux counts it: in hundredths of a second. */
final class ProcessorTime {

  private static final Path COUNTS = Path.of("/proc/self/stat");
  private static final int CHILDREN_IN_PROGRAMS = 13;
  private static final int CHILDREN_IN_SYSTEM = 14;
  private static final double MILLISECONDS = 10;

  private ProcessorTime() {}

  /** Whether this system counts it. */
  static boolean isCounted() {
    return Files.isReadable(COUNTS);
  }

  /** All of it so far, in milliseconds. */
  static double ofChildren() throws IOException {
    String counts = Files.readString(COUNTS);
    String[] behindName = counts.substring(counts.lastIndexOf(')') + 2).split(" ", -1);
    return MILLISECONDS
        * (Long.parseLong(behindName[CHILDREN_IN_PROGRAMS])
            + Long.parseLong(behindName[CHILDREN_IN_SYSTEM]));
  }
}
