package org.brakerules.calc.play;

import java.util.List;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.Row;
import org.brakerules.model.quantity.Length;

/** The sizes of clevis pins in ASME B18.8.1-1994. */
final class ClevisPinTable {

  /** All sizes, the smallest first. */
  static final List<ClevisPinSize> SIZES =
      CsvTable.ofResource("/org/brakerules/calc/clevis-pins.csv").stream()
          .map(ClevisPinTable::size)
          .toList();

  private ClevisPinTable() {}

  private static ClevisPinSize size(Row row) {
    return new ClevisPinSize(
        length(row, "nominal"),
        length(row, "thinnest"),
        length(row, "thickest"),
        length(row, "smallest-cotter-hole"),
        length(row, "largest-cotter-hole"),
        length(row, "cotter"));
  }

  private static Length length(Row row, String column) {
    return Length.parse(row.required(column));
  }
}
