package org.brakerules.harness.batch;

import java.nio.file.Path;

/**
 * Where the outputs of a run go; packed with gzip if a name ends in {@code .gz}. Until it is
 * finished they lie beside their places, so that nobody takes a part of them for the whole.
 *
 * @param decided the output
 * @param rejected the rejects
 */
public record Places(Path decided, Path rejected) {

  Path decidedPart() {
    return beside(decided, ".part");
  }

  Path rejectedPart() {
    return beside(rejected, ".part");
  }

  Path state() {
    return beside(decided, ".state");
  }

  private static Path beside(Path file, String ending) {
    return file.resolveSibling(file.getFileName() + ending);
  }
}
