package org.brakerules.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.SourceTable;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.part.PartKind;
import org.brakerules.parts.Ground;

/**
 * The parts that are used once, and what they come off for. A new one may be fitted already or lie
 * at hand, and the job does not say which.
 */
final class UsedOnceTable {

  /**
   * One row.
   *
   * @param id its id
   * @param part the kind of part that is used once
   * @param comesOffFor the kinds of parts it comes off for when they are replaced
   * @param sentence why it is not used again
   */
  record Entry(String id, PartKind part, List<PartKind> comesOffFor, String sentence) {

    boolean follows(Decision decision) {
      return decision.disposition() == Disposition.REPLACE
          && comesOffFor.contains(decision.part().kind());
    }

    Ground ground() {
      return new Ground(Ground.Kind.USED_ONCE, id, sentence);
    }
  }

  private final List<Entry> entries = new ArrayList<>();

  UsedOnceTable(Iterable<Row> rows, SourceTable sources) {
    for (Row row : rows) {
      Cells.sources(row, sources);
      entries.add(
          new Entry(
              row.required("id"),
              Cells.partKind(row, row.required("part")),
              row.list("comes-off-for").stream().map(id -> Cells.partKind(row, id)).toList(),
              row.required("sentence")));
    }
  }

  Stream<Entry> entries() {
    return entries.stream();
  }
}
