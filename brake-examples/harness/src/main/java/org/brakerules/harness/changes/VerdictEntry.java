package org.brakerules.harness.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.brakerules.harness.changelog.ChangelogEntry;

/**
 * An entry of the changelog that names ids, such as {@code - `DRUM-010`, from 2026-12-01, all drums
 * under us-federal: why}.
 *
 * @param line its line in the changelog
 * @param ids the ids it names
 * @param day the first day on which the verdict is another, as written; empty if it names none
 * @param who who sees another verdict; empty if it does not say
 * @param behindIds all that follows the ids
 */
record VerdictEntry(
    int line, List<String> ids, Optional<String> day, Optional<String> who, String behindIds) {

  private static final Pattern ID = Pattern.compile("\\G(?:, and |, | and )?`([^`]+)`");
  private static final Pattern FROM_AND_WHO =
      Pattern.compile("(?:, from (?<day>[^\\s,:]+))?(?:, (?<who>[^:]*[^:\\s])\\s*:)?");

  /** Keeps its own copy. */
  VerdictEntry {
    ids = List.copyOf(ids);
  }

  /** Reads an entry; one that begins with no id in backticks is prose and names none. */
  static VerdictEntry read(ChangelogEntry entry) {
    List<String> ids = new ArrayList<>();
    Matcher id = ID.matcher(entry.text());
    int end = 0;
    while (id.find()) {
      ids.add(Objects.requireNonNull(id.group(1)));
      end = id.end();
    }
    String behind = entry.text().substring(end);
    Matcher rest = FROM_AND_WHO.matcher(behind);
    rest.lookingAt();
    return new VerdictEntry(
        entry.line(),
        ids,
        Optional.ofNullable(rest.group("day")),
        Optional.ofNullable(rest.group("who")),
        behind);
  }

  /** What a reader of it would still have to ask, with what to write. */
  Stream<String> unsaid() {
    return Stream.of(unsaidDay(), unsaidWho()).flatMap(Optional::stream);
  }

  private Optional<String> unsaidDay() {
    if (day.isEmpty()) {
      return Optional.of(
          named() + " from which day on? Write it behind the ids, such as \", from 2026-12-01\"");
    }
    return day.filter(text -> !CalendarDay.is(text))
        .map(
            text ->
                named()
                    + " from which day on? \""
                    + text
                    + "\" is no day of the calendar; write one as YYYY-MM-DD, such as \", from"
                    + " 2026-12-01\"");
  }

  private Optional<String> unsaidWho() {
    return who.isPresent()
        ? Optional.empty()
        : Optional.of(
            named()
                + " for whom? Write between the day and a colon who sees another verdict, such as"
                + " \", all drums under us-federal:\"");
  }

  private String named() {
    return "`" + String.join("`, `", ids) + "`";
  }
}
