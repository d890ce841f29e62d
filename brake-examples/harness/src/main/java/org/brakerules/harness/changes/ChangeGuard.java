package org.brakerules.harness.changes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.harness.changelog.Changelog;
import org.brakerules.harness.changelog.ChangelogSection;

/** Asks of the changelog that it names each changed id, from which date, and for whom. */
final class ChangeGuard {

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
    VerdictEntries entries =
        VerdictEntries.in(open, new NamedIds(releases.idsWith(now)), differences);
    List<String> problems = new ArrayList<>();
    releases.unmentioned().stream()
        .map(
            file ->
                changelog.file() + ": no section for " + file + "; begin it with \"## VERSION\"")
        .forEach(problems::add);
    notRecorded().forEach(problems::add);
    unnamed(differences, entries).forEach(problems::add);
    entries.problems().map(told -> changelog.at(told.line()) + told.words()).forEach(problems::add);
    UsedAgain.problems(releases, now).forEach(problems::add);
    return problems;
  }

  /** A section below the newest is of a release that nobody recorded. */
  private Stream<String> notRecorded() {
    return open.stream()
        .skip(1)
        .map(
            section ->
                changelog.at(section.line())
                    + section.version()
                    + " is not on record; go back to the rule base as it was released, and put it"
                    + " there with brake changes --record "
                    + section.version());
  }

  private Stream<String> unnamed(List<Difference> differences, VerdictEntries entries) {
    Set<String> told = new HashSet<>(entries.named());
    told.addAll(entries.namedInProse());
    return differences.stream()
        .filter(difference -> !told.contains(difference.id()))
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
                VerdictEntries.form(difference.id()));
  }
}
