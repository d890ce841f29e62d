package org.brakerules.harness;

import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.brakerules.BrakeRules;
import org.brakerules.model.json.InvalidShelfException;
import org.brakerules.model.json.KitShelfReader;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.parts.Item;

/**
 * A file with a shelf of kits, as named on the command line.
 *
 * @param path the file
 */
record ShelfFile(Path path) {

  /**
   * Reads the shelf.
   *
   * @throws UnreadableFileException if there is no such file, or it cannot be read
   * @throws InvalidShelfException if it holds no valid shelf
   */
  KitShelf read() throws UnreadableFileException {
    if (Files.isDirectory(path)) {
      throw new UnreadableFileException("is a directory; name a file with a shelf of kits");
    }
    try {
      return new KitShelfReader(BrakeRules.standard().items().stream().map(Item::id).toList())
          .read(path);
    } catch (UncheckedIOException failure) {
      throw new UnreadableFileException(JobFile.reason(Objects.requireNonNull(failure.getCause())));
    }
  }
}
