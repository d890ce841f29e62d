package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.reading.Station;

/** Which findings may be the source that a hold waits for. */
final class HoldSources {

  private static final String TABLE = "/org/brakerules/work/hold-sources.csv";

  /**
   * A finding that may be a source.
   *
   * @param rule the rule that finds it
   * @param at where on the brake; empty if anywhere
   */
  record Found(String rule, Optional<Station> at) {

    boolean is(String other, Station station) {
      return rule.equals(other) && at.map(one -> one == station).orElse(true);
    }
  }

  private final Map<String, List<Found>> found = new LinkedHashMap<>();

  private HoldSources(List<Row> rows, Tables tables) {
    for (Row row : rows) {
      LimitTable.source(row, row.required("source"), tables.sources());
      found
          .computeIfAbsent(row.required("hold"), hold -> new ArrayList<>())
          .add(
              new Found(
                  row.required("found"), row.optional("station").map(at -> station(row, at))));
    }
  }

  /**
   * Reads the table that travels in this artifact.
   *
   * @throws RuleBaseException if it has a mistake
   */
  static HoldSources load(Tables tables) {
    return new HoldSources(CsvTable.ofResource(TABLE), tables);
  }

  private static Station station(Row row, String name) {
    return row.known(name, "station", Station::byId, Names.all(Station.class));
  }

  /** The findings that may be the source that a rule holds for. */
  List<Found> of(String hold) {
    return List.copyOf(found.getOrDefault(hold, List.of()));
  }
}
