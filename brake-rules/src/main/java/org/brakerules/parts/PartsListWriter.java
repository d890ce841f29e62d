package org.brakerules.parts;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.brakerules.model.kit.KitShelf;

/**
 * Writes parts lists as JSON, on one line. Lists are always there; a single value that is not
 * stated is left out. A price is a text with all its decimals.
 */
public final class PartsListWriter {

  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator out;

  private PartsListWriter(JsonGenerator out) {
    this.out = out;
  }

  /** Writes one value. */
  private interface Body<T> {
    void write(T value) throws IOException;
  }

  /** The parts list of a job. */
  public static String write(PartsList parts) {
    return written(writer -> writer.list(parts, Optional.empty()));
  }

  /** The parts list of a job with the kits that cover it. */
  public static String write(KitCover cover) {
    return written(writer -> writer.list(cover.parts(), Optional.of(cover)));
  }

  private static String written(Body<PartsListWriter> body) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      body.write(new PartsListWriter(out));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void list(PartsList parts, Optional<KitCover> cover) throws IOException {
    out.writeStartObject();
    out.writeObjectFieldStart("ruleBase");
    out.writeStringField("version", parts.ruleBase().version());
    out.writeStringField("fingerprint", parts.ruleBase().fingerprint());
    out.writeEndObject();
    unlessEmpty("reference", parts.reference());
    out.writeStringField("date", parts.date().toString());
    out.writeStringField("ruleSet", parts.ruleSet().id());
    objects("wheelEnds", parts.wheelEnds(), this::wheelEnd);
    objects("axles", parts.axles(), this::axle);
    objects("vehicle", parts.vehicle(), this::total);
    if (cover.isPresent()) {
      out.writeObjectFieldStart("kits");
      kits(cover.get());
      out.writeEndObject();
    }
    out.writeEndObject();
  }

  private void wheelEnd(WheelEndParts end) throws IOException {
    out.writeStringField("wheelEnd", end.wheelEnd().toString());
    out.writeBooleanField("inspected", end.inspected());
    out.writeBooleanField("reline", end.reline());
    texts("holds", end.holds());
    objects("lines", end.lines(), this::line);
  }

  private void axle(AxleParts axle) throws IOException {
    out.writeStringField("axle", axle.name());
    objects("lines", axle.lines(), this::total);
  }

  private void line(PartsLine line) throws IOException {
    what(line.item(), line.amount(), line.handling(), line.comesWith());
    texts("parts", line.places());
    objects("match", line.match(), this::detail);
    objects("reasons", line.grounds(), this::ground);
  }

  private void total(TotalLine line) throws IOException {
    what(line.item(), line.amount(), line.handling(), line.comesWith());
    texts("wheelEnds", line.wheelEnds());
    objects("match", line.match(), this::detail);
  }

  private void what(Item item, Amount amount, Handling handling, Optional<Item> comesWith)
      throws IOException {
    out.writeStringField("item", item.id());
    out.writeStringField("description", item.inWords(amount.pieces()));
    out.writeStringField("handling", id(handling));
    out.writeNumberField("pieces", amount.pieces());
    out.writeBooleanField("confirmed", amount.isCertain());
    texts("confirm", amount.confirm());
    if (comesWith.isPresent()) {
      out.writeStringField("comesWith", comesWith.get().id());
    }
  }

  private void detail(Detail detail) throws IOException {
    out.writeStringField("name", detail.name());
    out.writeStringField("value", detail.value());
  }

  private void ground(Ground ground) throws IOException {
    out.writeStringField("kind", id(ground.kind()));
    out.writeStringField("id", ground.id());
    out.writeStringField("sentence", ground.sentence());
  }

  private void kits(KitCover cover) throws IOException {
    KitShelf shelf = cover.shelf();
    unlessEmpty("shelf", shelf.name());
    unlessEmpty("currency", shelf.currency().map(Object::toString).orElse(""));
    unlessEmpty("price", cover.price().map(Prices.in(shelf)).orElse(""));
    objects("axles", cover.axles(), axle -> axleCover(axle, shelf));
  }

  private void axleCover(AxleCover axle, KitShelf shelf) throws IOException {
    out.writeStringField("axle", axle.name());
    objects("kits", axle.kits(), kit -> chosen(kit, shelf));
    objects("covered", axle.covered(), this::counted);
    objects("loose", axle.loose(), this::counted);
    objects("countAndConfirm", axle.countAndConfirm(), this::total);
    objects("short", axle.shortfalls(), this::shortfall);
    objects("salvage", axle.salvage(), this::counted);
    objects("spared", axle.spared(), this::counted);
    objects("leftOver", axle.leftOver(), this::counted);
    unlessEmpty("frictionCode", axle.frictionCode());
    unlessEmpty("price", axle.price().map(Prices.in(shelf)).orElse(""));
    out.writeNumberField("kitsWithoutPrice", axle.unpriced());
    out.writeBooleanField("exact", axle.exact());
    out.writeStringField("statement", axle.statement());
  }

  private void chosen(ChosenKit kit, KitShelf shelf) throws IOException {
    out.writeStringField("id", kit.kit().id());
    out.writeStringField("title", kit.kit().title());
    out.writeStringField("for", id(kit.kit().reach()));
    out.writeNumberField("count", kit.count());
    unlessEmpty("each", kit.kit().price().map(Prices.in(shelf)).orElse(""));
    unlessEmpty("price", kit.price().map(Prices.in(shelf)).orElse(""));
  }

  private void counted(Counted counted) throws IOException {
    out.writeStringField("item", counted.item().id());
    out.writeStringField("description", counted.item().inWords(counted.pieces()));
    out.writeNumberField("pieces", counted.pieces());
  }

  private void shortfall(Shortfall shortfall) throws IOException {
    out.writeStringField("kit", shortfall.kitId());
    out.writeStringField("item", shortfall.item().id());
    out.writeNumberField("holds", shortfall.holds());
    out.writeNumberField("needed", shortfall.needed());
  }

  private <T> void objects(String name, List<T> values, Body<T> body) throws IOException {
    out.writeArrayFieldStart(name);
    for (T value : values) {
      out.writeStartObject();
      body.write(value);
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void texts(String name, List<?> values) throws IOException {
    out.writeArrayFieldStart(name);
    for (Object value : values) {
      out.writeString(value.toString());
    }
    out.writeEndArray();
  }

  private void unlessEmpty(String name, String text) throws IOException {
    if (!text.isEmpty()) {
      out.writeStringField(name, text);
    }
  }

  private static String id(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
