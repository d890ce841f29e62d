package org.brakerules.harness.changes;

import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.model.text.NearestName;

/**
 * Holds the ids that entries name against those of the rule base, and says what to write instead.
 */
final class NamedIds {

  /** Behind the first id: a word or sign that means all between, and the last id. */
  private static final Pattern RANGE =
      Pattern.compile("\\s*(?:to|until|through|\\.\\.+|-|\u2013)\\s*`?(?<last>`?[A-Za-z0-9.-]+`?)");

  /** A range inside one pair of backticks. */
  private static final Pattern RANGE_AS_ID = Pattern.compile(".+\\.\\..+");

  private static final Pattern JOINED =
      Pattern.compile("(?:, and |, | and )(?<word>[A-Za-z0-9.-]+)");

  private final NavigableSet<String> known;

  /** With every id that a release had or the rule base has. */
  NamedIds(NavigableSet<String> known) {
    this.known = known;
  }

  /** What is wrong with the ids at the beginning of an entry; empty if nothing. */
  List<String> problems(VerdictEntry entry) {
    return range(entry)
        .or(() -> withoutBackticks(entry))
        .map(List::of)
        .orElseGet(() -> entry.ids().stream().flatMap(this::unknown).toList());
  }

  /** The known ids among the words of a text, backticks or not. */
  List<String> in(String text) {
    return Stream.of(text.split("[^A-Za-z0-9.-]+", -1))
        .map(word -> word.endsWith(".") ? word.substring(0, word.length() - 1) : word)
        .filter(known::contains)
        .distinct()
        .toList();
  }

  private Optional<String> range(VerdictEntry entry) {
    Matcher range = RANGE.matcher(entry.behindIds());
    if (!range.lookingAt()) {
      return Optional.empty();
    }
    String end = range.group("last");
    String last = end.replace("`", "");
    if (end.equals(last) && !known.contains(last)) {
      return Optional.empty();
    }
    String first = entry.ids().get(entry.ids().size() - 1);
    return Optional.of(
        "`%s` to `%s` is a range, and names none of those between; write each id by itself, %s"
            .formatted(first, last, example(first, last)));
  }

  private String example(String first, String last) {
    boolean isOrdered = first.compareTo(last) < 0 && known.contains(first) && known.contains(last);
    return isOrdered
        ? known.subSet(first, true, last, true).stream()
            .map(id -> "`" + id + "`")
            .collect(Collectors.joining(", "))
        : "in backticks, with commas between";
  }

  private Optional<String> withoutBackticks(VerdictEntry entry) {
    Matcher joined = JOINED.matcher(entry.behindIds());
    return Optional.of(joined)
        .filter(Matcher::lookingAt)
        .map(found -> found.group("word"))
        .filter(known::contains)
        .map(id -> "%s stands without backticks and is not read; write `%s`".formatted(id, id));
  }

  private Stream<String> unknown(String id) {
    if (known.contains(id)) {
      return Stream.empty();
    }
    if (RANGE_AS_ID.matcher(id).matches()) {
      return Stream.of(
          "`"
              + id
              + "` is a range, which names nothing; write each id by itself, in backticks, with"
              + " commas between");
    }
    String remedy =
        NearestName.of(id, known)
            .map(near -> "did you mean `" + near + "`?")
            .orElse("name one that is");
    return Stream.of("`" + id + "` is no id of the rule base; " + remedy);
  }
}
