package org.brakerules.linter.internal.language;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Presence;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.QuantityFormatException;
import org.brakerules.model.reading.Station;

/**
 * Something that the column {@code applies-to} can ask of a part, such as {@code layout.camshaft}.
 *
 * @param words the values it can have; empty if there is no fixed list of them
 * @param possible those of the words that a part of the kind can have
 * @param isQuantity whether its values are quantities
 */
public record Attribute(List<String> words, List<String> possible, boolean isQuantity) {

  private static final String STATION = "part.station";

  /** All attributes of a kind of part by name. */
  public static Map<String, Attribute> of(PartKind kind) {
    Map<String, Attribute> attributes = new LinkedHashMap<>();
    attributes.put("axle.kind", states(AxleKind.class));
    attributes.put("part.condition", states(Condition.class));
    attributes.put("part.presence", states(Presence.class));
    attributes.put(STATION, station(kind));
    ModelProperty.of(kind).forEach(property -> add("part.", property, attributes));
    ModelProperty.of(Layout.class).forEach(property -> add("layout.", property, attributes));
    ModelProperty.of(ChamberSize.class)
        .forEach(property -> add("layout.chamber.", property, attributes));
    return attributes;
  }

  /** Whether it has a fixed list of values. */
  public boolean hasWords() {
    return !words.isEmpty();
  }

  /**
   * A value as written, in the form in which equal ones are equal; empty if it can never be one.
   */
  public Optional<Object> value(String written) {
    if (hasWords()) {
      return Optional.<Object>of(written).filter(words::contains);
    }
    return isQuantity ? quantity(written) : Optional.of(written);
  }

  private static Attribute states(Class<?> type) {
    return new Attribute(Words.all(type), Words.all(type), false);
  }

  private static Attribute station(PartKind kind) {
    return new Attribute(
        Words.all(Station.class), kind.stations().stream().map(Station::id).toList(), false);
  }

  private static void add(String owner, ModelProperty property, Map<String, Attribute> attributes) {
    String name = owner + property.name();
    if (property.type().isEnum()) {
      attributes.put(name, states(property.type()));
    } else if (property.type() == String.class) {
      attributes.put(name, new Attribute(List.of(), List.of(), false));
    } else if (property.type() == Optional.class) {
      attributes.put(name, new Attribute(List.of(), List.of(), true));
    }
  }

  private static Optional<Object> quantity(String written) {
    try {
      return Optional.of(Quantities.parse(written));
    } catch (QuantityFormatException e) {
      return Optional.empty();
    }
  }
}
