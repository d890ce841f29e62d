package org.brakerules.internal.parts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.SourceTable;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.part.PartKind;
import org.brakerules.parts.Detail;

/**
 * What is asked for instead of what was found, where a part is replaced because it is of the wrong
 * kind, size or length.
 */
final class AskedForTable {

  private static final String FIND_OUT = "the maker's, find out";

  /**
   * One row.
   *
   * @param id its id
   * @param part the kind of part
   * @param detail what is wrong of the old part and how the new one must be
   * @param decidedBy the rules that reject the old one for it
   */
  record Entry(String id, PartKind part, Detail detail, List<String> decidedBy) {

    boolean follows(Decision decision) {
      return decision.part().kind() == part
          && decision.disposition() == Disposition.REPLACE
          && decision.reasons().stream().anyMatch(one -> decidedBy.contains(one.rule()));
    }
  }

  private final List<Entry> entries = new ArrayList<>();

  AskedForTable(Iterable<Row> rows, SourceTable sources) {
    for (Row row : rows) {
      Cells.sources(row, sources);
      entries.add(
          new Entry(
              row.required("id"),
              Cells.partKind(row, row.required("part")),
              new Detail(row.required("detail"), row.optional("value").orElse(FIND_OUT)),
              row.list("decided-by")));
    }
  }

  Stream<Entry> entries() {
    return entries.stream();
  }

  /** The rows that follow from what is replaced at either end of an axle, the first of a detail. */
  AskedFor of(Collection<Decision> ofAxle) {
    return new AskedFor(
        entries.stream().filter(entry -> ofAxle.stream().anyMatch(entry::follows)).toList());
  }
}
