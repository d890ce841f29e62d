package org.brakerules.linter.internal.table;

import java.util.ArrayList;
import java.util.List;

/**
 * The column {@code applies-to}.
 *
 * @param terms what it demands of a part; nothing means that every part fits
 * @param otherwise whether the row is for what no other row of its limit is for
 */
public record Selector(List<Term> terms, boolean otherwise) {

  /** The word for what no other row is for. */
  public static final String OTHERWISE = "otherwise";

  /** Reads a cell. */
  public static Selector read(String cell) {
    if (cell.isEmpty() || cell.equals(OTHERWISE)) {
      return new Selector(List.of(), !cell.isEmpty());
    }
    List<Term> terms = new ArrayList<>();
    int start = 0;
    for (String part : cell.split(";", -1)) {
      int blanks = part.length() - part.stripLeading().length();
      terms.add(Term.read(part.strip(), start + blanks));
      start += part.length() + 1;
    }
    return new Selector(List.copyOf(terms), false);
  }
}
