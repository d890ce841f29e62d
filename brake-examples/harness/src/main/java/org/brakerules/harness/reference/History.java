package org.brakerules.harness.reference;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.harness.changelog.Changelog;
import org.brakerules.harness.changelog.ChangelogEntry;
import org.brakerules.harness.changelog.ChangelogSection;

/**
 * What the changelog says of ids.
 *
 * @param releases the releases, newest first; at least one
 * @param known the ids that the rule base of the newest has
 */
record History(List<ChangelogSection> releases, Set<String> known) {

  /** Keeps its own copies. */
  History {
    releases = List.copyOf(releases);
    known = Set.copyOf(known);
    if (releases.isEmpty()) {
      throw new IllegalArgumentException("The changelog names no release.");
    }
  }

  /** From the changelog that this program was built with. */
  static History ofThisArtifact() {
    String file = "CHANGELOG.md";
    return new History(
        Changelog.read(file, BookText.read(file)).sections(), Material.standard().ids());
  }

  /** The history of what a page holds: entries that name one of its ids, then all others. */
  String of(Collection<String> ids) {
    StringBuilder history = new StringBuilder(ownOnes(ids));
    for (ChangelogSection release : releases) {
      for (ChangelogEntry entry : release.entries()) {
        if (ids.stream().anyMatch(namedIn(entry.text())::contains)) {
          history.append("- ").append(release.title()).append(": ");
          history.append(words(entry.text())).append('\n');
        }
      }
    }
    String others = history.isEmpty() ? "Everything" : "Everything else";
    return history.append("- ").append(others).append(" on this page: since ").append(first())
        + ".\n";
  }

  /** What an author added to the rule base that this program brings. */
  private String ownOnes(Collection<String> ids) {
    String own =
        ids.stream()
            .filter(id -> !known.contains(id))
            .map(id -> "`" + id + "`")
            .collect(Collectors.joining(", "));
    return own.isEmpty() ? "" : "- Not in a release of this program: " + own + ".\n";
  }

  /** What no entry names came with the first release, which names only what a reader looks for. */
  private String first() {
    return releases.get(releases.size() - 1).title();
  }

  private static Set<String> namedIn(String entry) {
    return Arrays.stream(words(entry).split("[^A-Za-z0-9.-]+", -1))
        .map(word -> word.endsWith(".") ? word.substring(0, word.length() - 1) : word)
        .collect(Collectors.toSet());
  }

  /** Links lead from the folder of the changelog, so only their words are kept. */
  private static String words(String entry) {
    return entry.replaceAll("\\[([^]]*)]\\([^)]*\\)", "$1");
  }
}
