package org.brakerules.harness.changes;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * An entry of the changelog that names ids, such as {@code - `DRUM-010`, from 2026-12-01, all drums
 * under us-federal: why}.
 *
 * @param line its line in the changelog
 * @param ids the ids it names
 * @param from the first day on which the verdict is another; empty if it names none
 * @param who who sees another verdict; empty if it does not say
 */
record VerdictEntry(int line, List<String> ids, Optional<LocalDate> from, Optional<String> who) {

  private static final Pattern ID = Pattern.compile("\\G(?:, and |, | and )?`([^`]+)`");
  private static final Pattern FROM_AND_WHO =
      Pattern.compile("(?:, from (?<day>[^\\s,:]+))?(?:, (?<who>[^:]*[^:\\s])\\s*:)?");

  /** Keeps its own copy. */
  VerdictEntry {
    ids = List.copyOf(ids);
  }

  /** Reads the text behind the dash; one that begins with no id is prose and names none. */
  static VerdictEntry read(int line, String text) {
    List<String> ids = new ArrayList<>();
    Matcher id = ID.matcher(text);
    int end = 0;
    while (id.find()) {
      ids.add(Objects.requireNonNull(id.group(1)));
      end = id.end();
    }
    Matcher rest = FROM_AND_WHO.matcher(text.substring(end));
    rest.lookingAt();
    return new VerdictEntry(
        line,
        ids,
        Optional.ofNullable(rest.group("day")).flatMap(VerdictEntry::day),
        Optional.ofNullable(rest.group("who")));
  }

  /** What a reader of it would still have to ask, with what to write. */
  Stream<String> unsaid() {
    String named = "`" + String.join("`, `", ids) + "`";
    List<String> unsaid = new ArrayList<>();
    if (from.isEmpty()) {
      unsaid.add(
          named + " from which day on? Write it behind the ids, such as \", from 2026-12-01\"");
    }
    if (who.isEmpty()) {
      unsaid.add(
          named
              + " for whom? Write between the day and a colon who sees another verdict, such as"
              + " \", all drums under us-federal:\"");
    }
    return unsaid.stream();
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException noDay) {
      return Optional.empty();
    }
  }
}
