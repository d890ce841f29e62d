package org.brakerules.linter.internal.base;

import java.util.Map;
import org.brakerules.linter.internal.text.Spot;

/**
 * One row of a table.
 *
 * @param spot where it starts
 * @param cells its cells by column
 */
public record Row(Spot spot, Map<String, Cell> cells) {

  /** The cell of a column; an empty one at the start of the row if the row is too short. */
  public Cell cell(String column) {
    return cells.getOrDefault(column, new Cell("", spot));
  }

  /** The text of a column; empty if the row is too short. */
  public String text(String column) {
    return cell(column).text();
  }
}
