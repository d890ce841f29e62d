package org.brakerules.harness.changes;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.brakerules.harness.changelog.Changelog;

/**
 * The folder in which stands what was released.
 *
 * @param changelog the changelog
 * @param releases the folder of records
 */
record Docs(Changelog changelog, Path releases) {

  private static final String CHANGELOG = "CHANGELOG.md";

  /**
   * Opens it.
   *
   * @throws IOException if it has no changelog that can be read
   */
  static Docs in(Path folder) throws IOException {
    Path file = folder.resolve(CHANGELOG);
    if (!Files.isRegularFile(file)) {
      throw new IOException(
          inWords(file)
              + " is not there; name the folder that holds "
              + CHANGELOG
              + " and releases with --docs");
    }
    return new Docs(Changelog.read(inWords(file), text(file)), folder.resolve("releases"));
  }

  private static String text(Path file) throws IOException {
    try {
      return Files.readString(file);
    } catch (CharacterCodingException e) {
      throw new IOException(inWords(file) + " is no UTF-8 text; save it as UTF-8", e);
    }
  }

  /** The record of a version, whether it is there or not. */
  Path recordOf(String version) {
    return releases.resolve(version + ReleaseFile.ENDING);
  }

  /** A file as messages name it. */
  static String inWords(Path file) {
    return file.toString().replace('\\', '/');
  }
}
