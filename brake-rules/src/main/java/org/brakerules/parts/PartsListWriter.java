package org.brakerules.parts;

import java.util.Optional;
import java.util.function.Consumer;
import org.brakerules.internal.json.AnswerJson;
import org.brakerules.model.kit.KitShelf;

/**
 * Writes parts lists as JSON, on one line. Lists are always there; a single value that is not
 * stated is left out. A price is a text with all its decimals.
 */
public final class PartsListWriter {

  private final AnswerJson out;

  private PartsListWriter(AnswerJson out) {
    this.out = out;
  }

  /** The parts list of a job. */
  public static String write(PartsList parts) {
    return written(writer -> writer.list(parts, Optional.empty()));
  }

  /** The parts list of a job with the kits that cover it. */
  public static String write(KitCover cover) {
    return written(writer -> writer.list(cover.parts(), Optional.of(cover)));
  }

  private static String written(Consumer<PartsListWriter> body) {
    return AnswerJson.document(out -> body.accept(new PartsListWriter(out)));
  }

  private void list(PartsList parts, Optional<KitCover> cover) {
    out.header(parts.ruleBase(), parts.reference(), parts.date(), parts.ruleSet());
    out.objects("wheelEnds", parts.wheelEnds(), this::wheelEnd);
    out.objects("axles", parts.axles(), this::axle);
    out.objects("vehicle", parts.vehicle(), this::total);
    cover.ifPresent(kits -> out.object("kits", () -> kits(kits)));
  }

  private void wheelEnd(WheelEndParts end) {
    out.text("wheelEnd", end.wheelEnd().toString());
    out.flag("inspected", end.inspected());
    out.flag("reline", end.reline());
    out.texts("holds", end.holds());
    out.objects("lines", end.lines(), this::line);
  }

  private void axle(AxleParts axle) {
    out.text("axle", axle.name());
    out.objects("lines", axle.lines(), this::total);
  }

  private void line(PartsLine line) {
    what(line.item(), line.amount(), line.handling(), line.comesWith());
    out.texts("parts", line.places());
    out.objects("match", line.match(), this::detail);
    out.objects("reasons", line.grounds(), this::ground);
  }

  private void total(TotalLine line) {
    what(line.item(), line.amount(), line.handling(), line.comesWith());
    out.texts("wheelEnds", line.wheelEnds());
    out.objects("match", line.match(), this::detail);
  }

  private void what(Item item, Amount amount, Handling handling, Optional<Item> comesWith) {
    out.text("item", item.id());
    out.text("description", item.inWords(amount.pieces()));
    out.text("handling", handling);
    out.number("pieces", amount.pieces());
    out.flag("confirmed", amount.isCertain());
    out.texts("confirm", amount.confirm());
    if (comesWith.isPresent()) {
      out.text("comesWith", comesWith.get().id());
    }
  }

  private void detail(Detail detail) {
    out.text("name", detail.name());
    out.text("value", detail.value());
  }

  private void ground(Ground ground) {
    out.text("kind", ground.kind());
    out.text("id", ground.id());
    out.text("sentence", ground.sentence());
  }

  private void kits(KitCover cover) {
    KitShelf shelf = cover.shelf();
    out.unlessEmpty("shelf", shelf.name());
    out.unlessEmpty("currency", shelf.currency().map(Object::toString).orElse(""));
    out.unlessEmpty("price", cover.price().map(Prices.in(shelf)).orElse(""));
    out.objects("axles", cover.axles(), axle -> axleCover(axle, shelf));
  }

  private void axleCover(AxleCover axle, KitShelf shelf) {
    out.text("axle", axle.name());
    out.objects("kits", axle.kits(), kit -> chosen(kit, shelf));
    out.objects("covered", axle.covered(), this::counted);
    out.objects("loose", axle.loose(), this::counted);
    out.objects("countAndConfirm", axle.countAndConfirm(), this::total);
    out.objects("short", axle.shortfalls(), this::shortfall);
    out.objects("salvage", axle.salvage(), this::counted);
    out.objects("spared", axle.spared(), this::counted);
    out.objects("leftOver", axle.leftOver(), this::counted);
    out.unlessEmpty("frictionCode", axle.frictionCode());
    out.unlessEmpty("price", axle.price().map(Prices.in(shelf)).orElse(""));
    out.number("kitsWithoutPrice", axle.unpriced());
    out.flag("exact", axle.exact());
    out.text("statement", axle.statement());
  }

  private void chosen(ChosenKit kit, KitShelf shelf) {
    out.text("id", kit.kit().id());
    out.text("title", kit.kit().title());
    out.text("for", kit.kit().reach());
    out.number("count", kit.count());
    out.unlessEmpty("each", kit.kit().price().map(Prices.in(shelf)).orElse(""));
    out.unlessEmpty("price", kit.price().map(Prices.in(shelf)).orElse(""));
  }

  private void counted(Counted counted) {
    out.text("item", counted.item().id());
    out.text("description", counted.item().inWords(counted.pieces()));
    out.number("pieces", counted.pieces());
  }

  private void shortfall(Shortfall shortfall) {
    out.text("kit", shortfall.kitId());
    out.text("item", shortfall.item().id());
    out.number("holds", shortfall.holds());
    out.number("needed", shortfall.needed());
  }
}
