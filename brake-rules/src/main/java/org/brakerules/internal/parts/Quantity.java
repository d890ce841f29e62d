package org.brakerules.internal.parts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.brakerules.parts.Amount;
import org.brakerules.parts.Item;

/**
 * The pieces that one part of a brake calls for.
 *
 * @param id the row that says so, the first of several that may
 * @param item the item
 * @param amount how many
 * @param comesWith the item it comes with; empty if it is bought for itself
 * @param minimumSet whether a reline renews it whatever it looks like
 * @param salvage whether it sits on the worn shoes and goes on the new ones
 * @param settled whether the layout states all that the row depends on
 */
record Quantity(
    String id,
    Item item,
    Amount amount,
    Optional<Item> comesWith,
    boolean minimumSet,
    boolean salvage,
    boolean settled) {

  /**
   * The same item with no number, for a reason that has nothing to do with how the brake is built.
   */
  Quantity toCount(String why) {
    return new Quantity(
        id, item, new Amount(0, List.of(why)), comesWith, minimumSet, salvage, settled);
  }

  /** The same pieces, as uncertain as those they go with. */
  Quantity as(Amount other) {
    return new Quantity(
        id,
        item,
        amount.plus(new Amount(0, other.confirm())),
        comesWith,
        minimumSet,
        salvage,
        settled);
  }

  static Quantity certain(QuantityRow row) {
    return new Quantity(
        row.id(), row.item(), row.amount(), row.comesWith(), row.minimumSet(), row.salvage(), true);
  }

  /** What several rows have in common that may be for the part; the rest is to be confirmed. */
  static Quantity open(List<QuantityRow> rows, List<String> unstated, Item item) {
    List<OptionalInt> counts = rows.stream().map(QuantityRow::count).distinct().toList();
    boolean alike =
        counts.size() == 1 && rows.stream().map(QuantityRow::minimumSet).distinct().count() == 1;
    List<Optional<Item>> comesWith = rows.stream().map(QuantityRow::comesWith).distinct().toList();
    List<String> confirm =
        Stream.concat(
                Stream.of("depends on " + String.join(" and ", unstated) + ", not stated"),
                rows.stream().map(QuantityRow::dependsOn).filter(text -> !text.isEmpty()))
            .distinct()
            .toList();
    return new Quantity(
        rows.get(0).id(),
        item,
        new Amount(alike ? counts.get(0).orElse(0) : 0, confirm),
        comesWith.size() == 1 ? comesWith.get(0) : Optional.empty(),
        rows.stream().anyMatch(QuantityRow::minimumSet),
        rows.stream().anyMatch(QuantityRow::salvage),
        false);
  }
}
