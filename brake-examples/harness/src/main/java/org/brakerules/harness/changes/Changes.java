package org.brakerules.harness.changes;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.harness.Counted;

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
    Docs read = Docs.in(docs);
    return of(read, Releases.in(read.releases(), read.changelog()), Release.now(resources));
  }

  static Changes of(Docs docs, Releases releases, Release now) {
    List<Difference> differences = Difference.between(releases.last(), now);
    return new Changes(
        releases.last().version(),
        differences,
        ChangeGuard.problems(docs.changelog(), releases, now, differences));
  }

  /** What differs: each id, what happened, the lines that went and those that came. */
  public Stream<String> report() {
    String head =
        differences.isEmpty()
            ? "No rule, limit or point differs from " + since + "."
            : Counted.of(differences.size(), "differs", "differ") + " from " + since + ":";
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
