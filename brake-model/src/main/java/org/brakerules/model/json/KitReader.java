package org.brakerules.model.json;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.brakerules.model.kit.Kit;
import org.brakerules.model.kit.KitReach;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.model.text.NearestName;

/** Reads the kits of a shelf. */
final class KitReader {

  private static final Names<KitReach> REACHES = Names.of(KitReach.class);
  private static final String ID =
      "the name of the kit in letters, digits, dots, hyphens and underscores, such as"
          + " \"HY-RELINE-D\"";
  private static final Pattern ID_FORM = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");
  private static final Pattern CODE_FORM = Pattern.compile("[A-Z]{2}");
  private static final Pattern PRICE_FORM = Pattern.compile("(?:0|[1-9][0-9]{0,6})(?:\\.[0-9]+)?");

  private final Values values;
  private final Problems problems;
  private final Collection<String> items;
  private final Optional<Currency> currency;
  private final boolean currencyWritten;
  private final Once<String> ids;

  KitReader(
      Values values,
      Collection<String> items,
      Optional<Currency> currency,
      boolean currencyWritten) {
    this.values = values;
    this.problems = values.problems();
    this.items = items;
    this.currency = currency;
    this.currencyWritten = currencyWritten;
    this.ids = new Once<>(problems);
  }

  Supplier<Kit> kit(Node node, Fields fields) {
    Optional<String> id = fields.required("id", ID).flatMap(it -> values.text(it, ID_FORM, ID));
    id.ifPresent(one -> ids.add(one, node, "kit " + one, "each kit once, with an id of its own"));
    Optional<String> title =
        fields.required("title", "what the kit is, in words").flatMap(values::text);
    Optional<KitReach> reach =
        fields
            .required("for", "what it is packed for: " + Shown.oneOf(REACHES.all()))
            .flatMap(it -> values.choice(it, REACHES));
    Optional<BigDecimal> price = fields.optional("price").flatMap(this::price);
    String code =
        fields
            .optional("frictionCode")
            .flatMap(
                it -> values.text(it, CODE_FORM, "the two letters of the code, such as \"FF\""))
            .orElse("");
    Map<String, Integer> contents = contents(fields);
    return () ->
        new Kit(id.orElseThrow(), title.orElseThrow(), reach.orElseThrow(), contents, price, code);
  }

  private Map<String, Integer> contents(Fields fields) {
    Entries entries =
        new Entries("an array of items", "an item: an object with item and count", problems);
    Once<String> once = new Once<>(problems);
    Map<String, Integer> contents = new LinkedHashMap<>();
    List<Node> nodes = entries.atLeastOne(fields, "contents");
    entries
        .each(nodes, (node, one) -> counted(node, one, once))
        .forEach(counted -> contents.put(counted.item(), counted.count()));
    return contents;
  }

  private record Counted(String item, int count) {}

  private Supplier<Counted> counted(Node node, Fields fields, Once<String> once) {
    Optional<String> item = fields.required("item", "the id of an item").flatMap(this::item);
    item.ifPresent(one -> once.add(one, node, one, "each item once, with its count"));
    Optional<Integer> count =
        fields
            .required("count", "how many of it are in the kit")
            .flatMap(it -> values.count(it, Kit.MOST_PIECES));
    return () -> new Counted(item.orElseThrow(), count.orElseThrow());
  }

  private Optional<String> item(Node node) {
    Optional<String> written =
        node instanceof Node.Text text ? Optional.of(text.value()) : Optional.empty();
    Optional<String> known = written.filter(items::contains);
    if (known.isEmpty()) {
      problems.add(
          node,
          written
              .flatMap(text -> NearestName.of(text, items))
              .map(near -> Shown.quoted(near) + ", the nearest known item")
              .orElseGet(() -> "the id of an item, such as \"roller-clip\""));
    }
    return known;
  }

  private Optional<BigDecimal> price(Node node) {
    if (!currencyWritten) {
      problems.add(node, "no price, or a \"currency\" beside the kits, such as \"EUR\"");
      return Optional.empty();
    }
    Optional<BigDecimal> price =
        node instanceof Node.Digits digits && PRICE_FORM.matcher(digits.written()).matches()
            ? Optional.of(new BigDecimal(digits.written()))
            : Optional.empty();
    int decimals = currency.map(KitShelf::decimals).orElse(Integer.MAX_VALUE);
    if (price.isEmpty()
        || price.get().scale() > decimals
        || price.get().compareTo(Kit.HIGHEST_PRICE) > 0) {
      problems.add(node, expected());
      return Optional.empty();
    }
    return price;
  }

  private String expected() {
    String form =
        currency
            .map(one -> ", with " + KitShelf.decimals(one) + " decimals at most as " + one + " has")
            .orElse("");
    return "a price from 0 to 1000000 without quotes and unit" + form;
  }
}
