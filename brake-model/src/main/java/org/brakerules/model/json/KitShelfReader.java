package org.brakerules.model.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.function.Function;
import org.brakerules.model.kit.KitShelf;

/**
 * Reads shelves of kits from JSON.
 *
 * <p>Reading is as strict as that of jobs: all problems of a document are reported together, each
 * with its line and column.
 */
public final class KitShelfReader {

  private final Collection<String> items;

  /**
   * Prepares to read.
   *
   * @param items the ids of everything a kit can hold
   */
  public KitShelfReader(Collection<String> items) {
    this.items = items.stream().toList();
  }

  /**
   * Reads a shelf from a text.
   *
   * @throws InvalidShelfException if the text is no shelf of kits
   */
  public KitShelf read(String json) {
    return shelf(kind -> DocumentText.of(kind, json));
  }

  /**
   * Reads a shelf from UTF-8 bytes, to the end of the stream; the stream is left open.
   *
   * @throws InvalidShelfException if the bytes are no shelf of kits
   * @throws UncheckedIOException if the stream cannot be read
   */
  public KitShelf read(InputStream json) {
    return shelf(kind -> DocumentText.read(kind, json));
  }

  /**
   * Reads a shelf from a UTF-8 file.
   *
   * @throws InvalidShelfException if the file holds no shelf of kits
   * @throws UncheckedIOException if the file cannot be read
   */
  public KitShelf read(Path file) {
    try (InputStream json = Files.newInputStream(file)) {
      return read(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private KitShelf shelf(Function<DocumentKind, String> text) {
    Problems problems = new Problems();
    try {
      Node root = TreeReader.read(DocumentKind.SHELF, text.apply(DocumentKind.SHELF), problems);
      return new ShelfAssembly(problems, items).shelf(root).orElseThrow(problems::asException);
    } catch (InvalidJobException invalid) {
      throw new InvalidShelfException(invalid.problems());
    }
  }
}
