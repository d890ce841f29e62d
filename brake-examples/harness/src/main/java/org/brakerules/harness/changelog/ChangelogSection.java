package org.brakerules.harness.changelog;

import java.util.List;

/**
 * What the changelog says of one release.
 *
 * @param line the line of its heading, counted from 1
 * @param title its heading, such as {@code 0.1.0 (2026-11-25)} or {@code Unreleased}
 * @param entries its entries in the order written
 */
public record ChangelogSection(int line, String title, List<ChangelogEntry> entries) {

  /** Keeps its own copy. */
  public ChangelogSection {
    entries = List.copyOf(entries);
  }

  /** The first word of its heading, such as {@code 0.1.0} or {@code Unreleased}. */
  public String version() {
    return title.split(" ", 2)[0];
  }
}
