package org.brakerules.harness.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.calc.Working;

/** What was worked out for one stack of shims. */
final class ShimAnswer {

  private static final String PUT_IN = "put in";
  private static final List<String> CHANGES = List.of("take out", PUT_IN);
  private static final String NONE = "none";

  private ShimAnswer() {}

  /** Whether shims are taken out or put in. */
  static boolean changes(Working working) {
    return working.results().stream()
        .anyMatch(one -> CHANGES.contains(one.name()) && !one.value().equals(NONE));
  }

  /** Whether there is anything to do to the stack, or still to be known of it. */
  static boolean isOpenOrChanges(Working working) {
    return working.results().isEmpty() || changes(working);
  }

  /** The answer in a sentence. */
  static String inWords(Working working) {
    String answer =
        working.results().stream()
            .map(one -> one.name() + " " + one.value())
            .collect(Collectors.joining("; "));
    return answer.substring(0, 1).toUpperCase(Locale.ROOT) + answer.substring(1) + ".";
  }

  /** The shims that go in; empty if none does. */
  static Optional<String> putIn(Working working) {
    return working.results().stream()
        .filter(one -> one.name().equals(PUT_IN) && !one.value().equals(NONE))
        .map(Working.Named::value)
        .findFirst();
  }
}
