package org.brakerules.internal.parts;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.SourceTable;
import org.brakerules.model.part.PartKind;
import org.brakerules.parts.Item;

/** Everything that can be ordered. */
final class ItemTable {

  private final Map<String, Item> items = new LinkedHashMap<>();

  ItemTable(Iterable<Row> rows, SourceTable sources) {
    for (Row row : rows) {
      Item item =
          new Item(
              row.required("id"),
              row.required("singular"),
              row.required("plural"),
              row.optional("part").map(id -> Cells.partKind(row, id)),
              Cells.yes(row, "lining"));
      Cells.sources(row, sources);
      if (items.put(item.id(), item) != null) {
        throw row.mistake("item \"" + item.id() + "\" is there twice");
      }
    }
  }

  List<Item> all() {
    return List.copyOf(items.values());
  }

  Collection<String> ids() {
    return items.keySet();
  }

  Optional<Item> find(String id) {
    return Optional.ofNullable(items.get(id));
  }

  /** What a kind of part is called where it is not known which of its items it is. */
  Item general(PartKind kind) {
    return items.values().stream()
        .filter(item -> item.part().filter(kind::equals).isPresent())
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("No item is a " + kind.inWords() + "."));
  }
}
