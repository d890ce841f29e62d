package org.brakerules.harness.changes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.brakerules.harness.UsageMistake;

/**
 * A release that is put on record. A record is never written anew, and none is written that the
 * changelog does not lead up to: what it leaves unsaid would never be asked for again.
 */
public final class Recording {

  private final Release release;
  private final Path file;
  private final List<String> problems;

  private Recording(Release release, Path file, List<String> problems) {
    this.release = release;
    this.file = file;
    this.problems = problems;
  }

  /**
   * Prepares the record of a rule base that the linter finds nothing wrong with. Nothing is
   * written.
   *
   * @param version the version, such as {@code 0.1.0}
   * @param resources the folder with {@code org/brakerules/rules} in it
   * @param docs the folder with {@code CHANGELOG.md} and {@code releases} in it
   * @throws UsageMistake if it is no version, or not newer than every release on record
   * @throws IOException if a file is not there or not as it should be
   */
  public static Recording of(String version, Path resources, Path docs) throws IOException {
    Version young =
        Version.read(version)
            .orElseThrow(
                () -> new UsageMistake("\"" + version + "\" is no version; write one like 1.2.3"));
    Docs read = Docs.in(docs);
    refuseIfNotNewer(young, read);
    Release now = Release.now(resources);
    List<String> problems = new ArrayList<>();
    ReleaseHeading.problem(young, read.changelog()).ifPresent(problems::add);
    problems.addAll(unsaid(read, now));
    return new Recording(
        Release.of(version, now.provisions().values()), read.recordOf(version), problems);
  }

  private static void refuseIfNotNewer(Version young, Docs docs) throws IOException {
    NavigableSet<Version> onRecord = new TreeSet<>();
    for (Path file : Releases.files(docs.releases())) {
      onRecord.add(version(file));
    }
    if (onRecord.contains(young)) {
      throw new UsageMistake(
          "%s is on record: %s; a release does not change afterwards, so record a newer one"
              .formatted(young, Docs.inWords(docs.recordOf(young.toString()))));
    }
    if (!onRecord.tailSet(young).isEmpty()) {
      Version newest = onRecord.last();
      throw new UsageMistake(
          "%s is older than %s, which is on record; name a newer one, such as %s"
              .formatted(young, newest, newest.next()));
    }
  }

  private static Version version(Path file) throws IOException {
    String name = ReleaseFile.version(file);
    return Version.read(name)
        .orElseThrow(
            () ->
                new IOException(
                    "%s is no record, for \"%s\" is no version; take it out or name it like 1.2.3.csv"
                        .formatted(Docs.inWords(file), name)));
  }

  /** Of the first release there is nothing to say: nobody has seen another verdict. */
  private static List<String> unsaid(Docs docs, Release now) throws IOException {
    return Releases.files(docs.releases()).isEmpty()
        ? List.of()
        : Changes.of(docs, Releases.in(docs.releases(), docs.changelog()), now).problems();
  }

  /** What the changelog has to say first, one line each; none if it may be written. */
  public List<String> problems() {
    return problems;
  }

  /**
   * Writes the record whole or not at all.
   *
   * @return the file
   * @throws IOException if it cannot be written
   * @throws IllegalStateException if there are problems
   */
  public Path write() throws IOException {
    if (!problems.isEmpty()) {
      throw new IllegalStateException("The changelog leaves something unsaid.");
    }
    Files.createDirectories(Optional.ofNullable(file.getParent()).orElseThrow());
    ReleaseFile.write(file, release);
    return file;
  }
}
