package org.brakerules.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.SourceTable;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.part.PartKind;
import org.brakerules.parts.Ground;

/** What a new part on one wheel means for the part across the axle. */
final class AxleSetTable {

  private static final List<String> THEN = List.of("order", "match");

  /**
   * One row.
   *
   * @param id its id
   * @param part the kind of part
   * @param order whether the partner's part is ordered as well, or only compared with the new one
   * @param decidedBy the rules that must have replaced the one; empty if any may
   * @param sentence why
   */
  record Entry(String id, PartKind part, boolean order, List<String> decidedBy, String sentence) {

    boolean follows(Decision decision) {
      return decision.part().kind() == part
          && decision.disposition() == Disposition.REPLACE
          && (decidedBy.isEmpty()
              || decision.reasons().stream().anyMatch(one -> decidedBy.contains(one.rule())));
    }

    private boolean isNewAt(AxleEnd end) {
      return decidedBy.isEmpty()
          && end.decisions().values().stream()
              .filter(decision -> decision.part().kind() == part && !follows(decision))
              .anyMatch(decision -> end.isNew(decision.part()));
    }

    Ground ground() {
      return new Ground(Ground.Kind.AXLE_SET, id, sentence);
    }
  }

  private final List<Entry> entries = new ArrayList<>();

  AxleSetTable(Iterable<Row> rows, SourceTable sources) {
    for (Row row : rows) {
      Cells.sources(row, sources);
      String then =
          row.known(
              row.required("then"),
              "consequence",
              word -> Optional.of(word).filter(THEN::contains),
              THEN);
      entries.add(
          new Entry(
              row.required("id"),
              Cells.partKind(row, row.required("part")),
              then.equals("order"),
              row.list("decided-by"),
              row.required("sentence")));
    }
  }

  Stream<Entry> entries() {
    return entries.stream();
  }

  /** The rows for what goes in across the axle new already. */
  Stream<Entry> besideNew(AxleEnd acrossTheAxle) {
    return entries().filter(entry -> entry.isNewAt(acrossTheAxle));
  }

  /** The rows that follow from what is replaced across the axle. */
  List<Entry> following(List<Decision> acrossTheAxle) {
    return entries.stream()
        .filter(entry -> acrossTheAxle.stream().anyMatch(entry::follows))
        .toList();
  }
}
