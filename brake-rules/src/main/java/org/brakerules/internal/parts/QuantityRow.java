package org.brakerules.internal.parts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.Selector;
import org.brakerules.internal.table.SourceTable;
import org.brakerules.model.part.PartKind;
import org.brakerules.parts.Amount;
import org.brakerules.parts.Item;

/**
 * How many pieces of an item one part calls for.
 *
 * @param id the id of the row
 * @param part the kind of part that calls for it
 * @param item the item
 * @param selector which parts the row is for
 * @param decidedBy the rules, or rows of the axle sets, whose work on the part needs the item;
 *     empty if any new part does
 * @param count how many; empty if only counting tells
 * @param dependsOn why the number is to be confirmed; empty if it is certain
 * @param comesWith the item it comes with; empty if it is bought for itself
 * @param minimumSet whether a reline renews it whatever it looks like
 * @param salvage whether it sits on the worn shoes and goes on the new ones
 */
record QuantityRow(
    String id,
    PartKind part,
    Item item,
    Selector selector,
    List<String> decidedBy,
    OptionalInt count,
    String dependsOn,
    Optional<Item> comesWith,
    boolean minimumSet,
    boolean salvage) {

  static QuantityRow of(Row row, ItemTable items, SourceTable sources) {
    PartKind part = Cells.partKind(row, row.required("part"));
    boolean confirmed = Cells.yes(row, "confirmed");
    Optional<String> dependsOn = row.optional("depends-on");
    OptionalInt count = count(row);
    if (confirmed == dependsOn.isPresent()) {
      throw row.mistake("\"depends-on\" says why a number is not confirmed, and only then");
    }
    if (confirmed && count.isEmpty()) {
      throw row.mistake("a confirmed row must have a count");
    }
    Cells.sources(row, sources);
    return new QuantityRow(
        row.required("id"),
        part,
        Cells.item(row, row.required("item"), items),
        Selector.parse(row, "applies-to", part),
        row.list("decided-by"),
        count,
        dependsOn.orElse(""),
        row.optional("with").map(id -> Cells.item(row, id, items)),
        Cells.yes(row, "minimum-set"),
        Cells.yes(row, "salvage"));
  }

  private static OptionalInt count(Row row) {
    Optional<String> written = row.optional("count");
    if (written.isEmpty()) {
      return OptionalInt.empty();
    }
    if (!written.get().matches("[1-9][0-9]?")) {
      throw row.mistake("\"" + written.get() + "\" is no count; write 1 to 99, or nothing");
    }
    return OptionalInt.of(Integer.parseInt(written.get()));
  }

  /** Whether the item is the part itself, and not something needed with it. */
  boolean isOfThePart() {
    return item.part().filter(part::equals).isPresent();
  }

  Amount amount() {
    return new Amount(count.orElse(0), dependsOn.isEmpty() ? List.of() : List.of(dependsOn));
  }
}
