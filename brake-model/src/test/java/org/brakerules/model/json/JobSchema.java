package org.brakerules.model.json;

import static org.brakerules.model.json.SchemaPieces.array;
import static org.brakerules.model.json.SchemaPieces.choice;
import static org.brakerules.model.json.SchemaPieces.constant;
import static org.brakerules.model.json.SchemaPieces.count;
import static org.brakerules.model.json.SchemaPieces.date;
import static org.brakerules.model.json.SchemaPieces.described;
import static org.brakerules.model.json.SchemaPieces.object;
import static org.brakerules.model.json.SchemaPieces.pattern;
import static org.brakerules.model.json.SchemaPieces.quantityName;
import static org.brakerules.model.json.SchemaPieces.ref;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.EarlierLining;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.Odometer;
import org.brakerules.model.job.ShimsAtHand;
import org.brakerules.model.job.Size;
import org.brakerules.model.job.StatedSize;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.AtMost;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Disturbance;
import org.brakerules.model.part.Means;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** Makes the schema of a job from the records the reader fills. */
final class JobSchema {

  private final Map<String, ObjectNode> definitions = new TreeMap<>();

  private JobSchema() {}

  /** The schema, with the example in it. */
  static ObjectNode with(JsonNode example) {
    JobSchema schema = new JobSchema();
    ObjectNode document = SchemaPieces.document("job.schema.json", "Brake job");
    document.setAll(schema.job());
    document.putArray("examples").add(example);
    document.putObject("$defs").setAll(schema.definitions);
    return document;
  }

  private ObjectNode job() {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    properties.put("reference", of(BrakeJob.class, "reference", line("H-4417")));
    properties.put("date", of(BrakeJob.class, "date", date("2026-11-20")));
    properties.put("ruleSet", of(BrakeJob.class, "ruleSet", name("us-federal")));
    properties.put("scope", of(BrakeJob.class, "scope", names(Scope.class)));
    properties.put("acceptance", of(BrakeJob.class, "acceptance", names(Acceptance.class)));
    properties.put("shimsAtHand", of(BrakeJob.class, "shimsAtHand", array(shims())));
    properties.put("sizes", of(BrakeJob.class, "sizes", array(size())));
    properties.put("earlierLinings", of(BrakeJob.class, "earlierLinings", array(earlier())));
    properties.put("makersLimits", of(BrakeJob.class, "makersLimits", array(limit())));
    properties.put(
        "units",
        of(BrakeJob.class, "units", atLeastOne(unit()).put("maxItems", UnitReader.MOST_UNITS)));
    return object(
        properties,
        Set.of(
            "reference", "acceptance", "shimsAtHand", "sizes", "earlierLinings", "makersLimits"));
  }

  private ObjectNode size() {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    properties.put("size", of(StatedSize.class, "size", names(Size.class)));
    properties.put("on", of(StatedSize.class, "on", line("axle2/left/camshaft-bushing/head-end")));
    properties.put("value", of(StatedSize.class, "value", quantity(Length.class)));
    return define("statedSize", object(properties, Set.of("on")));
  }

  private ObjectNode earlier() {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    properties.put("on", of(EarlierLining.class, "on", line("axle2/left/lining/upper")));
    properties.put("date", of(EarlierLining.class, "date", date("2026-03-02")));
    properties.put("thickness", of(EarlierLining.class, "thickness", quantity(Length.class)));
    properties.put("odometer", of(EarlierLining.class, "odometer", odometer()));
    properties.put("odometerNow", of(EarlierLining.class, "odometerNow", odometer()));
    return define("earlierLining", object(properties, Set.of()));
  }

  private static ObjectNode odometer() {
    return pattern("^" + Odometer.FORM.pattern() + "$", "401200 km");
  }

  private ObjectNode shims() {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    properties.put("thickness", of(ShimsAtHand.class, "thickness", quantity(Length.class)));
    properties.put("count", of(ShimsAtHand.class, "count", count(ShimsAtHand.MOST)));
    properties.put("condition", of(ShimsAtHand.class, "condition", names(Condition.class)));
    return define("shimsAtHand", object(properties, Set.of()));
  }

  private ObjectNode limit() {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    ObjectNode id =
        pattern(
            "^" + MakersLimitReader.LIMIT_ID.pattern() + "$", "camshaft-bushing.radial-play.max");
    properties.put("limit", of(MakersLimit.class, "limit", id));
    properties.put("on", of(MakersLimit.class, "on", line("tractor/axle2/left")));
    definitions.put("quantity", SchemaPieces.anyQuantity());
    properties.put("value", of(MakersLimit.class, "value", ref("quantity")));
    properties.put("document", of(MakersLimit.class, "document", line("cast on the drum")));
    properties.put("page", of(MakersLimit.class, "page", line("12")));
    return define("makersLimit", object(properties, Set.of("on", "page")));
  }

  private ObjectNode unit() {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    properties.put("unit", of(VehicleUnit.class, "name", name("tractor")));
    properties.put("builtOn", of(VehicleUnit.class, "builtOn", date("2019-05-01")));
    properties.put("axles", of(VehicleUnit.class, "axles", atLeastOne(axle())));
    return define("unit", object(properties, Set.of("unit", "builtOn")));
  }

  private ObjectNode axle() {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    properties.put("axle", of(Axle.class, "number", count(WheelEndPath.MOST_AXLES)));
    properties.put("kind", of(Axle.class, "kind", names(AxleKind.class)));
    ObjectNode ends = atLeastOne(wheelEnd()).put("maxItems", 2);
    properties.put("wheelEnds", of(Axle.class, "wheelEnds", ends));
    return define("axle", object(properties, Set.of("kind")));
  }

  private ObjectNode wheelEnd() {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    properties.put("side", of(WheelEndPath.class, "side", names(Side.class)));
    properties.put("layout", of(WheelEnd.class, "layout", record(Layout.class)));
    properties.put("parts", of(WheelEnd.class, "parts", array(part())));
    return define("wheelEnd", object(properties, Set.of("layout", "parts")));
  }

  private ObjectNode part() {
    ObjectNode part = SchemaPieces.NODES.objectNode();
    for (PartKind kind : PartKind.values()) {
      part.withArray("oneOf").add(part(kind));
    }
    return define("part", part);
  }

  private ObjectNode part(PartKind kind) {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    properties.put("part", of(Place.class, "kind", constant(Names.of(kind))));
    if (kind.hasStations()) {
      ObjectNode stations = choice(Names.of(kind.stations()).all());
      properties.put("station", described("the station", stations));
    }
    properties.put("number", of(Place.class, "number", count(kind.mostAtOnePlace())));
    properties.put("presence", of(Tag.class, "presence", names(Presence.class)));
    properties.put("condition", of(Tag.class, "condition", names(Condition.class)));
    properties.put("disturbance", of(Tag.class, "disturbance", names(Disturbance.class)));
    Set<String> stated = Set.copyOf(properties.keySet());
    addComponents(properties, kind.recordType().asSubclass(Record.class));
    List<String> optional =
        properties.keySet().stream()
            .filter(name -> !stated.contains(name) || !isRequired(name))
            .toList();
    return define(Names.of(kind), object(properties, optional));
  }

  private static boolean isRequired(String name) {
    return name.equals("part") || name.equals("station");
  }

  private ObjectNode record(Class<? extends Record> type) {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    addComponents(properties, type);
    return object(properties, properties.keySet());
  }

  private void addComponents(Map<String, ObjectNode> properties, Class<? extends Record> type) {
    for (Property<?> property : RecordShape.of(type).properties()) {
      String meaning = meaning(type, property.name());
      properties.put(property.name(), described(meaning, schemaOf(property)));
    }
  }

  private ObjectNode schemaOf(Property<?> property) {
    if (property instanceof Property.Choice<?> choice) {
      return choice.unstated() == Sign.NOT_CHECKED
          ? define("sign", choice(choice.names().all()))
          : choice(choice.names().all());
    }
    if (property instanceof Property.Measured<?> measured) {
      return measurement(measured.type());
    }
    if (property instanceof Property.Amount<?> amount) {
      return quantity(amount.type());
    }
    if (property instanceof Property.Nested<?> nested) {
      return record(nested.unstated().getClass());
    }
    return line("30");
  }

  private ObjectNode measurement(Class<?> kind) {
    ObjectNode either = SchemaPieces.NODES.objectNode();
    either.putArray("oneOf").add(reading(kind)).add(atLeastOne(reading(kind)));
    return define(quantityName(kind) + "Measurement", either);
  }

  private ObjectNode reading(Class<?> kind) {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    properties.put("value", of(Reading.class, "value", quantity(kind)));
    properties.put(
        "at",
        described(
            "where it was taken; the part's own station if left out",
            define("station", names(Station.class))));
    properties.put("method", of(Reading.class, "method", define("method", names(Method.class))));
    properties.put("uncertainty", of(Reading.class, "uncertainty", quantity(kind)));
    ObjectNode pressure = quantity(Pressure.class);
    properties.put("reservoirPressure", of(Reading.class, "reservoirPressure", pressure));
    properties.put("moment", of(Reading.class, "moment", define("moment", names(Moment.class))));
    List<String> optional = List.of("at", "method", "uncertainty", "reservoirPressure", "moment");
    return define(quantityName(kind) + "Reading", object(properties, optional));
  }

  private ObjectNode quantity(Class<?> kind) {
    return define(quantityName(kind), SchemaPieces.quantity(kind));
  }

  /** Puts a schema among the definitions and points to it. */
  private ObjectNode define(String name, ObjectNode schema) {
    definitions.put(name, schema);
    return ref(name);
  }

  private static String meaning(Class<?> type, String component) {
    RecordComponent declared =
        Arrays.stream(type.getRecordComponents())
            .filter(one -> one.getName().equals(component))
            .findFirst()
            .orElseThrow();
    Means means = declared.getAnnotation(Means.class);
    AtMost atMost = declared.getAnnotation(AtMost.class);
    return (means == null ? ComponentDocs.of(type, component) : means.value())
        + (atMost == null ? "" : "; more than " + atMost.value() + " is refused as a slip");
  }

  private static ObjectNode of(Class<?> type, String component, ObjectNode schema) {
    return described(ComponentDocs.of(type, component), schema);
  }

  private static ObjectNode names(Class<? extends Enum<?>> type) {
    return choice(namesOf(type));
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // every enum is an enum of itself
  private static List<String> namesOf(Class<? extends Enum<?>> type) {
    return Names.of((Class) type).all();
  }

  private static ObjectNode name(String example) {
    return pattern("^" + JobAssembly.NAME.pattern() + "$", example);
  }

  /** One line of text that is not blank. */
  private static ObjectNode line(String example) {
    return pattern("^(?=.*\\S)[^\\u0000-\\u001F\\u007F]*$", example)
        .put("maxLength", Values.MOST_TEXT_CHARACTERS);
  }

  private static ObjectNode atLeastOne(ObjectNode items) {
    return array(items).put("minItems", 1);
  }
}
