package org.brakerules.trial.coverage;

/** How a part of a case can stand to a limit. */
public enum Side {
  /** The reading passes, and is not at the limit. */
  INSIDE("inside", "a reading inside it"),
  /** The reading is the limit, to the last digit. */
  ON("on", "a reading on it"),
  /** The reading does not pass, and is not at the limit. */
  BEYOND("beyond", "a reading beyond it"),
  /** Nothing was measured. */
  NO_READING("no-reading", "the reading left out"),
  /** The table has no value, and the job supplies none of the maker. */
  NO_FIGURE("no-figure", "the maker's figure left out");

  private final String word;
  private final String asSeen;

  Side(String word, String asSeen) {
    this.word = word;
    this.asSeen = asSeen;
  }

  /** The side in one word, such as {@code no-reading}. */
  public String word() {
    return word;
  }

  /** The side in a table, such as {@code no reading}. */
  public String inWords() {
    return word.replace('-', ' ');
  }

  /** What a case shows, such as {@code a reading beyond it}. */
  public String asSeen() {
    return asSeen;
  }
}
