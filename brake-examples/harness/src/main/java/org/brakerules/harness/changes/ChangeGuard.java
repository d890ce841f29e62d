package org.brakerules.harness.changes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Asks of the changelog that it names each changed id, from which date, and for whom. */
final class ChangeGuard {

  private static final String FORM =
      "- `%s`, from YYYY-MM-DD, who sees another verdict: what and why";

  private final Changelog changelog;
  private final Releases releases;
  private final Release now;
  private final List<ChangelogSection> open;

  private ChangeGuard(Changelog changelog, Releases releases, Release now) {
    this.changelog = changelog;
    this.releases = releases;
    this.now = now;
    this.open = changelog.above(releases.last().version());
  }

  /** What a release of this rule base would leave unsaid; empty if nothing. */
  static List<String> problems(
      Changelog changelog, Releases releases, Release now, List<Difference> differences) {
    return new ChangeGuard(changelog, releases, now).problems(differences);
  }

  private List<String> problems(List<Difference> differences) {
    List<String> problems = new ArrayList<>();
    releases.unmentioned().stream()
        .map(
            file ->
                changelog.file() + ": no section for " + file + "; begin it with \"## VERSION\"")
        .forEach(problems::add);
    notRecorded().forEach(problems::add);
    unnamed(differences).forEach(problems::add);
    entries().flatMap(this::incomplete).forEach(problems::add);
    UsedAgain.problems(releases, now).forEach(problems::add);
    return problems;
  }

  private Stream<VerdictEntry> entries() {
    return open.stream().flatMap(section -> section.verdicts().stream());
  }

  /** A section below the newest is of a release that nobody recorded. */
  private Stream<String> notRecorded() {
    return open.stream()
        .skip(1)
        .map(
            section ->
                changelog.at(section.line())
                    + section.version()
                    + " is not on record; put it there with brake changes --record "
                    + section.version());
  }

  private Stream<String> unnamed(List<Difference> differences) {
    Set<String> named = new HashSet<>();
    entries().forEach(entry -> named.addAll(entry.ids()));
    return differences.stream()
        .filter(difference -> !named.contains(difference.id()))
        .map(this::unnamed);
  }

  private String unnamed(Difference difference) {
    String where = open.isEmpty() ? "begin a section \"## Unreleased\" and write" : "write";
    return changelog.at(open.isEmpty() ? 1 : open.get(0).line())
        + "`%s` (%s, %s) is not named; %s under **Verdicts** %s"
            .formatted(
                difference.id(),
                difference.kind().inWords(),
                difference.inWords(),
                where,
                FORM.formatted(difference.id()));
  }

  private Stream<String> incomplete(VerdictEntry entry) {
    Stream<String> misspelt =
        entry.ids().stream()
            .filter(id -> !releases.knew(id) && !now.provisions().containsKey(id))
            .map(id -> "`" + id + "` is no id of the rule base; name one that is");
    return Stream.concat(misspelt, entry.unsaid()).map(changelog.at(entry.line())::concat);
  }
}
