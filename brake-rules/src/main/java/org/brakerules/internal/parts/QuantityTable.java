package org.brakerules.internal.parts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.internal.table.SourceTable;
import org.brakerules.internal.table.Subject;
import org.brakerules.model.part.PartKind;
import org.brakerules.parts.Amount;
import org.brakerules.parts.Item;

/** How many pieces each part calls for, by configuration. */
final class QuantityTable {

  private final ItemTable items;
  private final Map<PartKind, List<QuantityRow>> ofPart = new EnumMap<>(PartKind.class);
  private final Map<PartKind, Map<Item, List<QuantityRow>>> neededWith =
      new EnumMap<>(PartKind.class);
  private final List<QuantityRow> byDecision = new ArrayList<>();

  QuantityTable(Iterable<Row> rows, ItemTable items, SourceTable sources) {
    this.items = items;
    Set<String> ids = new HashSet<>();
    for (Row row : rows) {
      QuantityRow quantity = QuantityRow.of(row, items, sources);
      if (!ids.add(quantity.id())) {
        throw row.mistake("row \"" + quantity.id() + "\" is there twice");
      }
      if (!quantity.decidedBy().isEmpty()) {
        byDecision.add(quantity);
      } else if (quantity.isOfThePart()) {
        ofPart.computeIfAbsent(quantity.part(), kind -> new ArrayList<>()).add(quantity);
      } else {
        neededWith
            .computeIfAbsent(quantity.part(), kind -> new LinkedHashMap<>())
            .computeIfAbsent(quantity.item(), item -> new ArrayList<>())
            .add(quantity);
      }
    }
  }

  Stream<QuantityRow> rows() {
    return Stream.of(
            ofPart.values().stream().flatMap(List::stream),
            neededWith.values().stream().flatMap(of -> of.values().stream()).flatMap(List::stream),
            byDecision.stream())
        .flatMap(rows -> rows);
  }

  /** What the work needs that a rule, or a row of the axle sets, asks for. */
  List<Quantity> neededBy(String ground) {
    return byDecision.stream()
        .filter(row -> row.decidedBy().contains(ground))
        .map(Quantity::certain)
        .toList();
  }

  /** Kinds that a reline renews, or that may have to be saved from the worn shoes. */
  List<PartKind> ofReline() {
    return ofPart.entrySet().stream()
        .filter(of -> of.getValue().stream().anyMatch(row -> row.minimumSet() || row.salvage()))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The pieces a part is. */
  Quantity of(Subject subject) {
    PartKind kind = subject.part().partKind();
    return pick(ofPart.getOrDefault(kind, List.of()), subject)
        .orElseGet(() -> unlisted(items.general(kind)));
  }

  /** What is needed with a part that is new. */
  List<Quantity> neededWith(Subject subject) {
    return neededWith.getOrDefault(subject.part().partKind(), Map.of()).values().stream()
        .flatMap(rows -> pick(rows, subject).stream())
        .toList();
  }

  private static Quantity unlisted(Item item) {
    Amount one = new Amount(1, List.of("this brake is in no row of the table of quantities"));
    return new Quantity("quantity.unlisted", item, one, Optional.empty(), false, false, true);
  }

  /** The first row that is for the part; all that may be for it, where one before it may be. */
  private Optional<Quantity> pick(List<QuantityRow> rows, Subject subject) {
    List<QuantityRow> possible = new ArrayList<>();
    boolean settled = false;
    for (QuantityRow row : rows) {
      Fit fit = row.selector().isOtherwise() ? Fit.YES : row.selector().fit(subject);
      if (!settled && fit != Fit.NO) {
        possible.add(row);
        settled = fit == Fit.YES;
      }
    }
    if (possible.isEmpty()) {
      return Optional.empty();
    }
    boolean certain = settled && possible.size() == 1;
    return Optional.of(
        certain
            ? Quantity.certain(possible.get(0))
            : Quantity.open(possible, unstated(possible, subject), general(possible)));
  }

  private Item general(Collection<QuantityRow> open) {
    List<Item> possible = open.stream().map(QuantityRow::item).distinct().toList();
    return possible.size() == 1 ? possible.get(0) : items.general(open.iterator().next().part());
  }

  private static List<String> unstated(List<QuantityRow> open, Subject subject) {
    return open.stream()
        .flatMap(row -> row.selector().unstated(subject).stream())
        .distinct()
        .toList();
  }
}
