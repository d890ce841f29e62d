package org.brakerules.harness;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file beside its place and then moves it there, so that nobody finds half of it. */
public final class WholeFile {

  private WholeFile() {}

  /** Whether a file can stand there, to be asked before long work. */
  static boolean hasPlace(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return parent != null && Files.isWritable(parent) && canBeReplaced(file);
  }

  /** A device, a pipe or a folder keeps its place: another file in it would take it away. */
  private static boolean canBeReplaced(Path file) {
    return !Files.exists(file) || Files.isRegularFile(file);
  }

  /**
   * Writes a file, or leaves what was there as it was.
   *
   * @throws IOException if it cannot be written
   */
  public static void write(Path file, String text) throws IOException {
    Path whole = file.toAbsolutePath();
    if (!canBeReplaced(whole)) {
      throw new FileSystemException(file.toString(), null, "it is no ordinary file");
    }
    Path beside = whole.resolveSibling(whole.getFileName() + ".part");
    try {
      Files.writeString(beside, text);
      Files.move(beside, whole, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
