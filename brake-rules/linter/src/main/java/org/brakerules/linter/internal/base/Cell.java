package org.brakerules.linter.internal.base;

import org.brakerules.linter.internal.text.Spot;

/**
 * One cell of a table.
 *
 * @param text what it holds, without blanks around it
 * @param spot where it starts
 */
public record Cell(String text, Spot spot) {

  /** The place of a character of the cell. */
  public Spot spotAt(int index) {
    return new Spot(spot.file(), spot.line(), spot.column() + index);
  }
}
