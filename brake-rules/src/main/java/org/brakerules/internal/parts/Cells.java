package org.brakerules.internal.parts;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.SourceTable;
import org.brakerules.model.decision.Source;
import org.brakerules.model.part.PartKind;
import org.brakerules.parts.Item;

/** What the cells of the tables of work say. */
final class Cells {

  private Cells() {}

  static boolean yes(Row row, String column) {
    return row.known(
        row.required(column),
        "answer",
        word -> Optional.of(word).filter(List.of("yes", "no")::contains).map("yes"::equals),
        List.of("yes", "no"));
  }

  static PartKind partKind(Row row, String id) {
    return row.known(
        id,
        "kind of part",
        PartKind::byId,
        Arrays.stream(PartKind.values()).map(PartKind::id).toList());
  }

  static Item item(Row row, String id, ItemTable items) {
    return row.known(id, "item", items::find, items.ids());
  }

  /** The sources of a row; it must have one. */
  static List<Source> sources(Row row, SourceTable sources) {
    row.required("source");
    return row.list("source").stream()
        .map(citation -> row.known(citation, "source", sources::find, sources.ids()))
        .toList();
  }
}
