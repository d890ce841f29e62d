package org.brakerules.harness.changelog;

import java.util.List;

/**
 * The changelog, newest release first.
 *
 * @param file its file, as a message names it
 * @param sections its sections in the order written
 */
public record Changelog(String file, List<ChangelogSection> sections) {

  /** Keeps its own copy. */
  public Changelog {
    sections = List.copyOf(sections);
  }

  /**
   * Reads a changelog.
   *
   * @param file its file, as a message is to name it
   * @param markdown its text
   */
  public static Changelog read(String file, String markdown) {
    return new Changelog(file, ChangelogReader.sections(markdown.lines().toList()));
  }

  /** The sections that stand above a release; all if it has none. */
  public List<ChangelogSection> above(String version) {
    return sections.stream().takeWhile(section -> !section.version().equals(version)).toList();
  }

  /** A place in it, as messages begin. */
  public String at(int line) {
    return file + ":" + line + ": ";
  }
}
