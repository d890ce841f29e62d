package org.brakerules.model.json;

import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.kit.Kit;
import org.brakerules.model.kit.KitShelf;

/** Puts a shelf together from the tree of its document, if there is no problem in it. */
final class ShelfAssembly {

  private static final String CURRENCY = "a currency by its three letters, such as \"EUR\"";

  private final Problems problems;
  private final Values values;
  private final Collection<String> items;

  ShelfAssembly(Problems problems, Collection<String> items) {
    this.problems = problems;
    this.values = new Values(problems);
    this.items = items;
  }

  /** Reads the shelf; empty if there is a problem. */
  Optional<KitShelf> shelf(Node root) {
    return Fields.of(root, "a shelf of kits: an object in braces", problems)
        .flatMap(fields -> shelf(root, fields));
  }

  private Optional<KitShelf> shelf(Node root, Fields fields) {
    String name = fields.optional("shelf").flatMap(values::text).orElse("");
    Optional<Node> written = fields.optional("currency");
    Optional<Currency> currency = written.flatMap(this::currency);
    Entries entries = new Entries("an array of kits", "a kit: an object in braces", problems);
    KitReader reader = new KitReader(values, items, currency, written.isPresent());
    List<Kit> kits = entries.each(entries.atLeastOne(fields, "kits"), reader::kit);
    fields.refuseOthers();
    return problems.count() > 0
        ? Optional.empty()
        : problems.build(root, () -> new KitShelf(name, currency, kits));
  }

  private Optional<Currency> currency(Node node) {
    Optional<Currency> known =
        node instanceof Node.Text text
            ? Currency.getAvailableCurrencies().stream()
                .filter(one -> one.getCurrencyCode().equals(text.value()))
                .findFirst()
            : Optional.empty();
    if (known.isEmpty()) {
      problems.add(node, CURRENCY);
    }
    return known;
  }
}
