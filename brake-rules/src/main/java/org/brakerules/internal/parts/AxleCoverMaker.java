package org.brakerules.internal.parts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.calc.kit.KitChoice;
import org.brakerules.calc.kit.KitNeed;
import org.brakerules.calc.kit.KitOffer;
import org.brakerules.calc.kit.KitSearch;
import org.brakerules.model.kit.Kit;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.model.text.NearestName;
import org.brakerules.parts.AxleCover;
import org.brakerules.parts.AxleParts;
import org.brakerules.parts.ChosenKit;
import org.brakerules.parts.Counted;
import org.brakerules.parts.Handling;
import org.brakerules.parts.TotalLine;
import org.brakerules.parts.WheelEndParts;

/** Chooses the kits of a shelf that cover what an axle needs. */
final class AxleCoverMaker {

  /**
   * Before the id of a kit whose linings have no code stated: it may be any, so it mixes with none.
   */
  private static final String NOT_STATED = "?";

  private final KitShelf shelf;
  private final ItemTable items;
  private final List<KitOffer> offers;

  AxleCoverMaker(KitShelf shelf, ItemTable items) {
    this.shelf = shelf;
    this.items = items;
    shelf.kits().forEach(this::refuseUnknown);
    this.offers = shelf.kits().stream().map(this::offer).toList();
  }

  private void refuseUnknown(Kit kit) {
    for (String id : kit.contents().keySet()) {
      if (items.find(id).isEmpty()) {
        throw new IllegalArgumentException(
            "Kit "
                + kit.id()
                + " holds \""
                + id
                + "\", which is no item; "
                + NearestName.of(id, items.ids())
                    .map(near -> "did you mean \"" + near + "\"?")
                    .orElse("see the list of items"));
      }
    }
  }

  private KitOffer offer(Kit kit) {
    boolean lined =
        kit.contents().keySet().stream().anyMatch(id -> items.find(id).orElseThrow().withLining());
    String stated = kit.frictionCode().isEmpty() ? NOT_STATED + kit.id() : kit.frictionCode();
    return new KitOffer(kit.id(), kit.contents(), kit.price(), lined ? stated : "");
  }

  /** The cover of one axle; empty if nothing is to be ordered for it. */
  Optional<AxleCover> cover(AxleParts axle, List<WheelEndParts> ends, LiningCodes linings) {
    List<TotalLine> ordered =
        axle.lines().stream()
            .filter(line -> line.handling() == Handling.ORDER && line.comesWith().isEmpty())
            .toList();
    if (ordered.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Integer> required = pieces(ordered);
    Map<String, Integer> saved =
        pieces(axle.lines().stream().filter(line -> line.handling() == Handling.SALVAGE).toList());
    KitChoice choice = KitSearch.best(new KitNeed(required, saved, linings.toMatch()), offers);
    return Optional.of(cover(axle, ends, linings, ordered, required, saved, choice));
  }

  private AxleCover cover(
      AxleParts axle,
      List<WheelEndParts> ends,
      LiningCodes linings,
      List<TotalLine> ordered,
      Map<String, Integer> required,
      Map<String, Integer> saved,
      KitChoice choice) {
    List<ChosenKit> kits = chosen(choice);
    return new AxleCover(
        axle.unit(),
        axle.axle(),
        kits,
        counted(less(required, choice.loose())),
        counted(choice.loose()),
        ordered.stream().filter(line -> !line.amount().isCertain()).toList(),
        new Shortfalls(items, ends, required).of(kits),
        counted(less(saved, choice.welcomed())),
        counted(choice.welcomed()),
        counted(choice.leftOver()),
        choice.code().startsWith(NOT_STATED) ? "" : choice.code(),
        price(kits),
        choice.goodness().unpriced(),
        choice.exact(),
        statement(choice, needsLining(required) ? linings : LiningCodes.NONE));
  }

  private boolean needsLining(Map<String, Integer> required) {
    return required.keySet().stream().anyMatch(id -> items.find(id).orElseThrow().withLining());
  }

  private List<ChosenKit> chosen(KitChoice choice) {
    return shelf.kits().stream()
        .map(kit -> new ChosenKit(kit, choice.counts().getOrDefault(kit.id(), 0)))
        .filter(chosen -> chosen.count() > 0)
        .toList();
  }

  private static Optional<BigDecimal> price(List<ChosenKit> kits) {
    return kits.stream().flatMap(kit -> kit.price().stream()).reduce(BigDecimal::add);
  }

  private static String statement(KitChoice choice, LiningCodes linings) {
    String exact =
        choice.exact()
            ? "No better choice is on this shelf."
            : "A good choice found step by step; so many kinds of kit were not searched to the end,"
                + " and a better choice may exist.";
    if (linings.isOpen()) {
      return exact
          + " A lining stays whose friction code is not stated or not one: compare it with the new"
          + " ones.";
    }
    return exact
        + linings
            .toMatch()
            .map(code -> " Linings of code " + code + " only, as that of the lining that stays.")
            .orElse("");
  }

  private static Map<String, Integer> pieces(List<TotalLine> lines) {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    lines.forEach(line -> pieces.merge(line.item().id(), line.amount().pieces(), Integer::sum));
    return pieces;
  }

  private static Map<String, Integer> less(Map<String, Integer> all, Map<String, Integer> some) {
    Map<String, Integer> less = new LinkedHashMap<>();
    all.forEach((item, count) -> less.put(item, count - some.getOrDefault(item, 0)));
    return less;
  }

  /** In the order of the table of items; what is zero is left out. */
  private List<Counted> counted(Map<String, Integer> pieces) {
    List<Counted> counted = new ArrayList<>();
    items
        .all()
        .forEach(
            item -> {
              int count = pieces.getOrDefault(item.id(), 0);
              if (count > 0) {
                counted.add(new Counted(item, count));
              }
            });
    return counted;
  }
}
