package org.brakerules.harness;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file beside its place and then moves it there, so that nobody finds half of it, even
 * after a power failure.
 */
public final class WholeFile {

  private WholeFile() {}

  /** Whether a file can stand there, to be asked before long work. */
  static boolean hasPlace(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return parent != null && Files.isWritable(parent) && canBeReplaced(file);
  }

  /**
   * A device, a pipe, a link or a folder keeps its place: another file in it would take it away.
   */
  private static boolean canBeReplaced(Path file) {
    return !Files.exists(file, LinkOption.NOFOLLOW_LINKS)
        || Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
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
    Path beside = beside(whole);
    try {
      writeThrough(beside, text, file);
      Files.move(beside, whole, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /** Where a file lies until it is whole. */
  public static Path beside(Path file) {
    return file.resolveSibling(file.getFileName() + ".part");
  }

  /** A failure names the file that was asked for. */
  private static void writeThrough(Path beside, String text, Path file) throws IOException {
    try (FileChannel out =
        FileChannel.open(
            beside,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      ByteBuffer left = StandardCharsets.UTF_8.encode(text);
      while (left.hasRemaining()) {
        out.write(left);
      }
      out.force(true);
    } catch (FileSystemException named) {
      throw named;
    } catch (IOException failure) {
      throw new FileSystemException(file.toString(), null, failure.getMessage());
    }
  }
}
