package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
   * @param stated what must have been seen for it, such as {@code oilSoaked}; empty if it does not
   *     matter
   */
  record Found(String rule, Optional<Station> at, Optional<String> stated) {

    /** The component of its rule, such as {@code wheel-seal}. */
    String component() {
      return rule.replaceAll("-[0-9]+$", "").toLowerCase(Locale.ROOT);
    }

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
                  row.required("found"),
                  row.optional("station").map(at -> station(row, at)),
                  row.optional("stated")));
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

  /**
   * The findings that may be the source of holds, the likeliest first. Thick grease does not come
   * from where thin oil does; where nobody said which it was, all of them may be.
   *
   * @param holds the rules that hold
   * @param seen the properties that were seen
   */
  List<Found> of(List<String> holds, Set<String> seen) {
    List<Found> all =
        holds.stream()
            .flatMap(hold -> found.getOrDefault(hold, List.of()).stream())
            .distinct()
            .toList();
    boolean isSaid = all.stream().flatMap(one -> one.stated().stream()).anyMatch(seen::contains);
    return all.stream()
        .filter(one -> !isSaid || one.stated().map(seen::contains).orElse(true))
        .toList();
  }
}
