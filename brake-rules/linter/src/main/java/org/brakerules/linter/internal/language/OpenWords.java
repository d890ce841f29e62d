package org.brakerules.linter.internal.language;

import java.util.List;

/** What the cases can leave open, in the words of the command that lists it. */
public final class OpenWords {

  /** All of them. */
  public static final List<String> ALL =
      List.of(
          "rule-fires",
          "rule-near",
          "condition-holds",
          "condition-fails",
          "limit-applies",
          "limit-inside",
          "limit-on",
          "limit-beyond",
          "limit-no-reading",
          "limit-no-figure",
          "point",
          "source");

  private OpenWords() {}
}
