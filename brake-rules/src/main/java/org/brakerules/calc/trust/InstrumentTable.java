package org.brakerules.calc.trust;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.Row;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.reading.Method;

/** The table of instruments. */
final class InstrumentTable {

  static final List<Instrument> INSTRUMENTS =
      CsvTable.ofResource("/org/brakerules/calc/instruments.csv").stream()
          .map(InstrumentTable::instrument)
          .toList();

  private InstrumentTable() {}

  private static Instrument instrument(Row row) {
    List<Method> methods =
        Arrays.stream(row.required("methods").split(";"))
            .map(id -> Method.byId(id).orElseThrow(() -> row.mistake(id + " is no method")))
            .toList();
    return new Instrument(
        row.required("instrument"),
        methods,
        Quantities.parse(row.required("uncertainty")),
        Standing.valueOf(row.required("standing").toUpperCase(Locale.ROOT)));
  }
}
