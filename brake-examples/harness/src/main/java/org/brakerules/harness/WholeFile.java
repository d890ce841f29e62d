package org.brakerules.harness;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file beside its place and then moves it there, so that nobody finds half of it. */
public final class WholeFile {

  private WholeFile() {}

  /** Whether a file can stand there, to be asked before long work. */
  static boolean hasPlace(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return parent != null && Files.isWritable(parent) && !Files.isDirectory(file);
  }

  /**
   * Writes a file, or leaves what was there as it was.
   *
   * @throws IOException if it cannot be written
   */
  public static void write(Path file, String text) throws IOException {
    Path whole = file.toAbsolutePath();
    Path beside = whole.resolveSibling(whole.getFileName() + ".part");
    try {
      Files.writeString(beside, text);
      Files.move(beside, whole, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
