package org.brakerules.harness.changes;

import java.util.List;

/**
 * What the changelog says of one release.
 *
 * @param line the line of its heading
 * @param version the first word of its heading, such as {@code 0.1.0} or {@code Unreleased}
 * @param verdicts the entries under <b>Verdicts</b> that name ids
 */
record ChangelogSection(int line, String version, List<VerdictEntry> verdicts) {

  /** Keeps its own copy. */
  ChangelogSection {
    verdicts = List.copyOf(verdicts);
  }
}
