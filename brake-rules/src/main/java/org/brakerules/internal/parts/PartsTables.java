package org.brakerules.internal.parts;

import java.util.List;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.SourceTable;
import org.brakerules.parts.Item;

/**
 * What the parts list knows beside the decisions.
 *
 * @param items everything that can be ordered
 * @param quantities how many pieces each part calls for
 * @param axleSets what a new part means across the axle
 * @param usedOnce the parts that are used once, and what they come off for
 * @param askedFor what is asked for instead of a kind, size or length that was rejected
 */
public record PartsTables(
    ItemTable items,
    QuantityTable quantities,
    AxleSetTable axleSets,
    UsedOnceTable usedOnce,
    AskedForTable askedFor) {

  private static final String FOLDER = "/org/brakerules/work/";

  /**
   * Reads the tables of this artifact.
   *
   * @throws org.brakerules.internal.table.RuleBaseException if a table has a mistake
   */
  public static PartsTables load(SourceTable sources) {
    ItemTable items = new ItemTable(CsvTable.ofResource(FOLDER + "items.csv"), sources);
    return new PartsTables(
        items,
        new QuantityTable(CsvTable.ofResource(FOLDER + "quantities.csv"), items, sources),
        new AxleSetTable(CsvTable.ofResource(FOLDER + "axle-sets.csv"), sources),
        new UsedOnceTable(CsvTable.ofResource(FOLDER + "used-once.csv"), sources),
        new AskedForTable(CsvTable.ofResource(FOLDER + "asked-for.csv"), sources));
  }

  /** Everything that can be ordered, in the order of the table. */
  public List<Item> all() {
    return items.all();
  }
}
