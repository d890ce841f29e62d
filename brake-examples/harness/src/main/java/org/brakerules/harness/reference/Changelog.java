package org.brakerules.harness.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The changelog, asked for what it says of ids. */
record Changelog(List<Release> releases) {

  private static final String RELEASE = "## ";
  private static final String ENTRY = "- ";

  /**
   * One release.
   *
   * @param title its version and day
   * @param entries what changed, in the words of the changelog
   */
  record Release(String title, List<String> entries) {}

  /** The changelog that this program was built with. */
  static Changelog ofThisArtifact() {
    return read(BookText.read("CHANGELOG.md"));
  }

  static Changelog read(String markdown) {
    List<Release> releases = new ArrayList<>();
    for (String line : markdown.lines().toList()) {
      if (line.startsWith(RELEASE)) {
        releases.add(new Release(line.substring(RELEASE.length()), new ArrayList<>()));
      } else if (line.startsWith(ENTRY) && !releases.isEmpty()) {
        last(releases).entries().add(words(line.substring(ENTRY.length())));
      }
    }
    if (releases.isEmpty()) {
      throw new IllegalArgumentException("The changelog names no release.");
    }
    return new Changelog(List.copyOf(releases));
  }

  /** The history of what a page holds: entries that name one of its ids, then all others. */
  String historyOf(Collection<String> ids) {
    Set<String> named = new TreeSet<>();
    StringBuilder history = new StringBuilder();
    for (Release release : releases) {
      for (String entry : release.entries()) {
        List<String> names = ids.stream().filter(namedIn(entry)::contains).toList();
        named.addAll(names);
        if (!names.isEmpty()) {
          history.append("- ").append(release.title()).append(": ").append(entry).append('\n');
        }
      }
    }
    String others = named.isEmpty() ? "Everything" : "Everything else";
    return history.append("- ").append(others).append(" on this page: since ").append(first())
        + ".\n";
  }

  /** What no entry names came with the first release, which names only what a reader looks for. */
  private String first() {
    return last(releases).title();
  }

  private static Release last(List<Release> releases) {
    return releases.get(releases.size() - 1);
  }

  private static Set<String> namedIn(String entry) {
    return Arrays.stream(entry.split("[^A-Za-z0-9.-]+", -1))
        .map(word -> word.endsWith(".") ? word.substring(0, word.length() - 1) : word)
        .collect(Collectors.toSet());
  }

  /** Links lead from the folder of the changelog, so only their words are kept. */
  private static String words(String entry) {
    return entry.replaceAll("\\[([^]]*)]\\([^)]*\\)", "$1");
  }
}
