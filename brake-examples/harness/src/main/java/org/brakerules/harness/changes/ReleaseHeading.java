package org.brakerules.harness.changes;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.harness.changelog.Changelog;
import org.brakerules.harness.changelog.ChangelogSection;

/** What the newest section of the changelog is headed by when its release is made. */
final class ReleaseHeading {

  private static final Pattern DAY = Pattern.compile(" \\((?<day>[^)]*)\\)");

  private ReleaseHeading() {}

  /** What is wrong with the heading of the newest section, with what to write; empty if nothing. */
  static Optional<String> problem(Version version, Changelog changelog) {
    if (changelog.sections().isEmpty()) {
      return Optional.of(
          changelog.at(1) + "there is no section; begin one with " + wanted(version));
    }
    ChangelogSection newest = changelog.sections().get(0);
    return problem(version, newest)
        .map(words -> changelog.at(newest.line()) + words + "; write " + wanted(version));
  }

  private static Optional<String> problem(Version version, ChangelogSection newest) {
    if (!newest.version().equals(version.toString())) {
      return Optional.of(
          "the newest section is \"%s\", not %s".formatted(newest.version(), version));
    }
    Matcher day = DAY.matcher(newest.title().substring(newest.version().length()));
    if (!day.matches()) {
      return Optional.of("the section of " + version + " does not say its day");
    }
    return CalendarDay.is(day.group("day"))
        ? Optional.empty()
        : Optional.of("\"" + day.group("day") + "\" is no day of the calendar");
  }

  private static String wanted(Version version) {
    return "\"## " + version + " (YYYY-MM-DD)\", with the day of the release";
  }
}
