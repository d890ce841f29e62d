package org.brakerules.harness.changes;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.trial.provision.Provisions;

/** What differs from the last release, and what the changelog leaves unsaid of it. */
public final class Changes {

  private final String since;
  private final List<Difference> differences;
  private final List<String> problems;

  private Changes(String since, List<Difference> differences, List<String> problems) {
    this.since = since;
    this.differences = differences;
    this.problems = problems;
  }

  /**
   * Holds a rule base that the linter finds nothing wrong with against the last release.
   *
   * @param resources the folder with {@code org/brakerules/rules} in it
   * @param docs the folder with {@code CHANGELOG.md} and {@code releases} in it
   * @throws IOException if a file is not there or not as it should be
   */
  public static Changes of(Path resources, Path docs) throws IOException {
    Changelog changelog = Changelog.read(docs.resolve("CHANGELOG.md"));
    Releases releases = Releases.in(docs.resolve("releases"), changelog);
    Release now = Release.of("now", Provisions.in(resources));
    List<Difference> differences = Difference.between(releases.last(), now);
    return new Changes(
        releases.last().version(),
        differences,
        ChangeGuard.problems(changelog, releases, now, differences));
  }

  /**
   * Puts a rule base on record as released. A record is never written anew.
   *
   * @param version the version, such as {@code 0.1.0}
   * @return the file
   * @throws IOException if the version is on record, or a file cannot be read or written
   */
  public static Path record(String version, Path resources, Path docs) throws IOException {
    Path folder = Files.createDirectories(docs.resolve("releases"));
    Path file = folder.resolve(version + ReleaseFile.ENDING);
    if (Files.exists(file)) {
      throw new FileAlreadyExistsException(
          file.toString(), null, "it is on record; a release does not change afterwards");
    }
    ReleaseFile.write(file, Release.of(version, Provisions.in(resources)));
    return file;
  }

  /** What differs: each id, what happened, the lines that went and those that came. */
  public Stream<String> report() {
    String head =
        differences.isEmpty()
            ? "No rule, limit or point differs from " + since + "."
            : "%d differ from %s:".formatted(differences.size(), since);
    return Stream.concat(Stream.of(head), differences.stream().flatMap(Changes::lines));
  }

  private static Stream<String> lines(Difference one) {
    String head = "%s (%s, %s)".formatted(one.id(), one.kind().inWords(), one.inWords());
    return Stream.concat(Stream.of(head), one.lines().map(line -> "  " + line));
  }

  /** What the changelog leaves unsaid, one line each; none if a release may be made. */
  public List<String> problems() {
    return problems;
  }
}
