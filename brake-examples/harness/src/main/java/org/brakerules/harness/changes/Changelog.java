package org.brakerules.harness.changes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The changelog, newest release first.
 *
 * @param file its file, as a message names it
 * @param sections its sections in the order written
 */
record Changelog(String file, List<ChangelogSection> sections) {

  /** Keeps its own copy. */
  Changelog {
    sections = List.copyOf(sections);
  }

  static Changelog read(Path file) throws IOException {
    return new Changelog(
        file.toString().replace('\\', '/'), ChangelogReader.sections(Files.readAllLines(file)));
  }

  /** The sections that stand above a release; all if it has none. */
  List<ChangelogSection> above(String version) {
    return sections.stream().takeWhile(section -> !section.version().equals(version)).toList();
  }

  /** A place in it, as messages begin. */
  String at(int line) {
    return file + ":" + line + ": ";
  }
}
