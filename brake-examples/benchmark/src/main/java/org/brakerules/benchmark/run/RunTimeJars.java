package org.brakerules.benchmark.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The jars that a program takes along when it uses the rules.
 *
 * @param count how many
 * @param bytes how large together
 */
record RunTimeJars(int count, long bytes) {

  /** Those the build laid into a folder; none if there is no folder. */
  static RunTimeJars in(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return new RunTimeJars(0, 0);
    }
    try (Stream<Path> files = Files.list(folder)) {
      List<Long> sizes = files.map(RunTimeJars::size).toList();
      return new RunTimeJars(sizes.size(), sizes.stream().mapToLong(Long::longValue).sum());
    }
  }

  private static long size(Path file) {
    try {
      return Files.size(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
