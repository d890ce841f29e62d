package org.brakerules.linter.internal.check;

import java.util.Collection;
import java.util.stream.Collectors;
import org.brakerules.model.text.NearestName;

/** What to write instead of an unknown name. */
final class Remedy {

  private static final int MOST_NAMES = 12;

  private Remedy() {}

  /** The nearest known name, or all of them where they are few, or else where to find them. */
  static String known(String written, Collection<String> known, String whereToFindThem) {
    return NearestName.of(written, known)
        .map(near -> "write \"" + near + "\"")
        .orElseGet(
            () -> known.isEmpty() || known.size() > MOST_NAMES ? whereToFindThem : oneOf(known));
  }

  /** All names to choose from. */
  static String oneOf(Collection<String> known) {
    return known.stream()
        .sorted()
        .collect(
            Collectors.joining("\", \"", known.size() == 1 ? "write \"" : "write one of \"", "\""));
  }
}
