package org.brakerules.harness.changes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.brakerules.harness.changelog.Changelog;
import org.brakerules.harness.changelog.ChangelogSection;

/**
 * The releases on record, in the order of the changelog.
 *
 * @param newestFirst at least one
 * @param unmentioned the files of records that the changelog has no section for
 */
record Releases(List<Release> newestFirst, List<String> unmentioned) {

  /** Keeps its own copies. */
  Releases {
    newestFirst = List.copyOf(newestFirst);
    unmentioned = List.copyOf(unmentioned);
  }

  /**
   * Reads a folder of records.
   *
   * @throws IOException if it cannot be read, or no record in it is of a release of the changelog
   */
  static Releases in(Path folder, Changelog changelog) throws IOException {
    List<String> mentioned = changelog.sections().stream().map(ChangelogSection::version).toList();
    List<Release> known = new ArrayList<>();
    List<String> unmentioned = new ArrayList<>();
    for (Path file : files(folder)) {
      Release release = ReleaseFile.read(file);
      if (mentioned.contains(release.version())) {
        known.add(release);
      } else {
        unmentioned.add(file.toString().replace('\\', '/'));
      }
    }
    if (known.isEmpty()) {
      throw new IOException(
          "there is no record of a release that "
              + changelog.file()
              + " names; put the last one on record with brake changes --record VERSION");
    }
    known.sort(Comparator.comparingInt(release -> mentioned.indexOf(release.version())));
    return new Releases(known, unmentioned);
  }

  /** The records in a folder, by name; none if there is no such folder. */
  static List<Path> files(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(ReleaseFile.ENDING))
          .sorted()
          .toList();
    }
  }

  /** What the rule base is held against. */
  Release last() {
    return newestFirst.get(0);
  }

  /** Every id that a release had, with those of the rule base. */
  NavigableSet<String> idsWith(Release now) {
    NavigableSet<String> ids = new TreeSet<>(now.provisions().keySet());
    newestFirst.forEach(release -> ids.addAll(release.provisions().keySet()));
    return ids;
  }
}
