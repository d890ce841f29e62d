package org.brakerules.parts;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.model.kit.KitShelf;

/** The rows of parts lists, by the names of their columns. */
final class CsvRows {

  private CsvRows() {}

  static Stream<Map<String, String>> of(PartsList parts) {
    return Stream.of(
            parts.wheelEnds().stream().flatMap(CsvRows::ofWheelEnd),
            parts.axles().stream()
                .flatMap(axle -> axle.lines().stream().map(line -> row("axle", axle.name(), line))),
            parts.vehicle().stream().map(line -> row("vehicle", places(line.wheelEnds()), line)))
        .flatMap(rows -> rows);
  }

  private static Stream<Map<String, String>> ofWheelEnd(WheelEndParts end) {
    return end.lines().stream()
        .map(
            line -> {
              Map<String, String> row = row("wheel-end", end.wheelEnd().toString());
              what(row, line.item(), line.amount(), line.handling(), line.comesWith());
              row.put("match", match(line.match()));
              row.put("parts", places(line.places()));
              row.put(
                  "reasons",
                  line.grounds().stream()
                      .map(Ground::id)
                      .distinct()
                      .collect(Collectors.joining("; ")));
              return row;
            });
  }

  private static Map<String, String> row(String section, String where, TotalLine line) {
    Map<String, String> row = row(section, where);
    what(row, line.item(), line.amount(), line.handling(), line.comesWith());
    row.put("match", match(line.match()));
    return row;
  }

  static Stream<Map<String, String>> ofKits(KitCover cover) {
    return cover.axles().stream()
        .flatMap(
            axle ->
                Stream.of(
                        axle.kits().stream().map(kit -> kit(axle, kit, cover.shelf())),
                        axle.loose().stream().map(one -> counted("loose", axle, one)),
                        axle.salvage().stream().map(one -> counted("salvage", axle, one)),
                        axle.spared().stream().map(one -> counted("spared", axle, one)),
                        axle.leftOver().stream().map(one -> counted("left-over", axle, one)),
                        axle.shortfalls().stream().map(one -> shortfall(axle, one)))
                    .flatMap(rows -> rows));
  }

  private static Map<String, String> kit(AxleCover axle, ChosenKit kit, KitShelf shelf) {
    Map<String, String> row = row("kit", axle.name());
    row.put("kit", kit.kit().id());
    row.put("description", kit.kit().title());
    row.put("pieces", Integer.toString(kit.count()));
    kit.price()
        .map(Prices.in(shelf))
        .ifPresent(
            price -> {
              row.put("price", price);
              row.put("currency", shelf.currency().map(Object::toString).orElse(""));
            });
    return row;
  }

  private static Map<String, String> counted(String section, AxleCover axle, Counted counted) {
    Map<String, String> row = row(section, axle.name());
    row.put("item", counted.item().id());
    row.put("description", counted.item().inWords(counted.pieces()));
    row.put("pieces", Integer.toString(counted.pieces()));
    return row;
  }

  private static Map<String, String> shortfall(AxleCover axle, Shortfall shortfall) {
    Map<String, String> row = row("short", axle.name());
    row.put("kit", shortfall.kitId());
    row.put("item", shortfall.item().id());
    row.put("description", shortfall.item().inWords(shortfall.needed()));
    row.put("pieces", Integer.toString(shortfall.holds()));
    row.put("confirm", shortfall.needed() + " needed");
    return row;
  }

  private static Map<String, String> row(String section, String where) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("section", section);
    row.put("where", where);
    return row;
  }

  private static void what(
      Map<String, String> row,
      Item item,
      Amount amount,
      Handling handling,
      Optional<Item> comesWith) {
    row.put("handling", handling.name().toLowerCase(Locale.ROOT));
    row.put("item", item.id());
    row.put("description", item.inWords(amount.pieces()));
    row.put("pieces", amount.pieces() == 0 ? "" : Integer.toString(amount.pieces()));
    row.put(
        "confirm",
        amount.isCertain() ? "" : "count and confirm: " + String.join("; ", amount.confirm()));
    row.put("comes-with", comesWith.map(Item::id).orElse(""));
  }

  private static String match(List<Detail> details) {
    return details.stream()
        .map(detail -> detail.name() + " " + detail.value())
        .collect(Collectors.joining("; "));
  }

  private static String places(List<?> places) {
    return places.stream().map(Object::toString).collect(Collectors.joining("; "));
  }
}
