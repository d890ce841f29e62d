package org.brakerules.harness.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.brakerules.harness.UsageMistake;
import org.brakerules.harness.WholeFile;

/**
 * Where the outputs of a run go; packed with gzip if a name ends in {@code .gz}. Until it is
 * finished they lie beside their places, so that nobody takes a part of them for the whole.
 *
 * @param decided the output
 * @param rejected the rejects
 */
public record Places(Path decided, Path rejected) {

  /** What lies beside them until they are finished. */
  public List<Path> unfinished() {
    return List.of(decidedPart(), rejectedPart(), state(), StateFile.beside(state()));
  }

  /**
   * Refuses to write where an unfinished run keeps its rejects.
   *
   * @param part where the rejects are to lie until they are finished
   * @throws UsageMistake if some lie there
   * @throws IOException if nobody can tell
   */
  public static void refuseRejectsOfAnother(Path part) throws IOException {
    if (Files.exists(part) && Files.size(part) > 0) {
      throw new UsageMistake(
          part
              + " holds the rejects of an unfinished run; name another file with --rejects, or"
              + " start afresh with --again");
    }
  }

  /** Whether a run has left a state from which it can go on. */
  public boolean isUnfinished() {
    return Files.exists(state());
  }

  Path decidedPart() {
    return WholeFile.beside(decided);
  }

  Path rejectedPart() {
    return WholeFile.beside(rejected);
  }

  Path state() {
    return decided.resolveSibling(decided.getFileName() + ".state");
  }
}
