package org.brakerules.trial;

/**
 * A rule base with one change in it.
 *
 * @param of the rule or the limit that was changed
 * @param where the file and, for a row, its line
 * @param words what was changed
 */
public record Mutant(String of, String where, String words) {

  @Override
  public String toString() {
    return of + " (" + where + "): " + words;
  }
}
