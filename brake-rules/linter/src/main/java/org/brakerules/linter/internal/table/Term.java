package org.brakerules.linter.internal.table;

import java.util.List;

/**
 * One demand in the column {@code applies-to}, such as {@code layout.camshaft=tube|split}.
 *
 * @param text the demand as written
 * @param start where it starts in the cell
 * @param attribute what it asks for; empty if it is no demand
 * @param negated whether it refuses the values instead
 * @param values the values
 */
public record Term(String text, int start, String attribute, boolean negated, List<String> values) {

  private static final String NOT = "not ";

  static Term read(String text, int start) {
    String[] sides = text.split("=", -1);
    if (sides.length != 2) {
      return new Term(text, start, "", false, List.of());
    }
    String written = sides[1].strip();
    boolean negated = written.startsWith(NOT);
    String list = negated ? written.substring(NOT.length()) : written;
    List<String> values = List.of(list.split("\\|", -1)).stream().map(String::strip).toList();
    return new Term(text, start, sides[0].strip(), negated, values);
  }

  /** Whether it has the form of a demand. */
  public boolean isWhole() {
    return !attribute.isEmpty();
  }
}
