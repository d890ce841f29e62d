package org.brakerules.model.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.AngleUnit;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.ForceUnit;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.PressureUnit;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.quantity.ShareUnit;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.quantity.TorqueUnit;
import org.brakerules.model.quantity.Unit;

/** The pieces that both schemas are made of. */
final class SchemaPieces {

  static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final String ID = "https://example.org/brake-rules/schema/";
  private static final String DECIMAL = "(?:[0-9]+|[0-9]*\\.[0-9]{1,6})";
  private static final String FRACTION = "(?:(?:[0-9]+ +)?[0-9]+/(?:2|4|8|16|32|64))";
  private static final List<Unit<?>> WITH_FRACTIONS = List.of(LengthUnit.INCH, AngleUnit.TURN);

  /** Each kind of quantity with its units. */
  private static final Map<Class<?>, List<? extends Unit<?>>> UNITS =
      Map.of(
          Length.class, List.of(LengthUnit.values()),
          Force.class, List.of(ForceUnit.values()),
          Torque.class, List.of(TorqueUnit.values()),
          Pressure.class, List.of(PressureUnit.values()),
          Angle.class, List.of(AngleUnit.values()),
          Share.class, List.of(ShareUnit.values()));

  private SchemaPieces() {}

  /** The head of a schema document. */
  static ObjectNode document(String file, String title) {
    return NODES
        .objectNode()
        .put("$schema", "https://json-schema.org/draft/2020-12/schema")
        .put("$id", ID + file)
        .put("title", title);
  }

  /** An object with no other than these properties. */
  static ObjectNode object(Map<String, ObjectNode> properties, Collection<String> optional) {
    ObjectNode object = NODES.objectNode().put("type", "object");
    ArrayNode required = object.putArray("required");
    properties.keySet().stream().filter(name -> !optional.contains(name)).forEach(required::add);
    if (required.isEmpty()) {
      object.remove("required");
    }
    object.putObject("properties").setAll(properties);
    return object.put("additionalProperties", false);
  }

  static ObjectNode described(String description, ObjectNode schema) {
    ObjectNode described = NODES.objectNode().put("description", description);
    return described.setAll(schema);
  }

  static ObjectNode ref(String definition) {
    return NODES.objectNode().put("$ref", "#/$defs/" + definition);
  }

  static ObjectNode constant(String value) {
    return NODES.objectNode().put("const", value);
  }

  static ObjectNode choice(Collection<String> names) {
    ObjectNode choice = NODES.objectNode().put("type", "string");
    names.forEach(choice.putArray("enum")::add);
    return choice;
  }

  static ObjectNode pattern(String pattern, String... examples) {
    ObjectNode text = NODES.objectNode().put("type", "string").put("pattern", pattern);
    Arrays.stream(examples).forEach(text.putArray("examples")::add);
    return text;
  }

  static ObjectNode date(String example) {
    return pattern("^(?:19|20|21)[0-9]{2}-[0-9]{2}-[0-9]{2}$", example).put("format", "date");
  }

  static ObjectNode array(ObjectNode items) {
    return NODES.objectNode().put("type", "array").set("items", items);
  }

  static ObjectNode count(int largest) {
    return NODES.objectNode().put("type", "integer").put("minimum", 1).put("maximum", largest);
  }

  /** The name under which a kind of quantity is defined. */
  static String quantityName(Class<?> quantity) {
    return quantity.getSimpleName().toLowerCase(Locale.ROOT);
  }

  /** The text of a quantity of one kind. */
  static ObjectNode quantity(Class<?> kind) {
    return quantity("^\\s*", UNITS.get(kind));
  }

  /** The text of a quantity of any kind. */
  static ObjectNode anyQuantity() {
    return quantity("^\\s*", allUnits());
  }

  /** The text of a quantity that was worked out, and may have been rounded. */
  static ObjectNode shownQuantity() {
    return quantity("^(?:about )?\\s*", allUnits());
  }

  private static List<? extends Unit<?>> allUnits() {
    return UNITS.values().stream()
        .flatMap(List::stream)
        .sorted(Comparator.comparing(Unit::symbol))
        .toList();
  }

  private static ObjectNode quantity(String start, List<? extends Unit<?>> units) {
    String decimals = DECIMAL + "\\s*" + symbols(units);
    List<? extends Unit<?>> withFractions =
        units.stream().filter(WITH_FRACTIONS::contains).toList();
    String fractions =
        withFractions.isEmpty() ? "" : "|" + FRACTION + "\\s*" + symbols(withFractions);
    String[] examples = units.stream().map(unit -> "0.5 " + unit.symbol()).toArray(String[]::new);
    return pattern(start + "(?:" + decimals + fractions + ")\\s*$", examples);
  }

  private static String symbols(List<? extends Unit<?>> units) {
    return units.stream()
        .map(unit -> unit.symbol().replace(".", "\\."))
        .collect(Collectors.joining("|", "(?:", ")"));
  }
}
