package org.brakerules.model.json;

import static org.brakerules.model.json.SchemaPieces.array;
import static org.brakerules.model.json.SchemaPieces.choice;
import static org.brakerules.model.json.SchemaPieces.constant;
import static org.brakerules.model.json.SchemaPieces.described;
import static org.brakerules.model.json.SchemaPieces.pattern;
import static org.brakerules.model.json.SchemaPieces.ref;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** Makes the schema of a decision from its records. */
final class DecisionSchema {

  /** Texts that may be empty and are left out then. */
  private static final Set<String> LEFT_OUT_IF_EMPTY =
      Set.of("reference", "action", "clause", "instrument", "how");

  /** A component that is no field of its own: the text of the value. */
  private static final String AS_WRITTEN = "written";

  private static final String PART_PATH =
      "^(?:[a-z][a-z0-9-]*/)?axle[1-9][0-9]?/(?:left|right)/[a-z-]+(?:/[a-z-]+)?(?:/[0-9]+)?$";
  private static final String WHEEL_END_PATH =
      "^(?:[a-z][a-z0-9-]*/)?axle[1-9][0-9]?/(?:left|right)$";

  private final Map<String, ObjectNode> definitions = new TreeMap<>();

  private DecisionSchema() {}

  /** The schema, with the example in it. */
  static ObjectNode with(JsonNode example) {
    DecisionSchema schema = new DecisionSchema();
    ObjectNode document = SchemaPieces.document("decision.schema.json", "Decision on a brake job");
    document.setAll(schema.object(JobDecision.class));
    document.putArray("examples").add(example);
    document.putObject("$defs").setAll(schema.definitions);
    return document;
  }

  private ObjectNode object(Class<?> record) {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    Set<String> optional = new LinkedHashSet<>();
    addComponents(record, properties, optional);
    return SchemaPieces.object(properties, optional);
  }

  private void addComponents(
      Class<?> record, Map<String, ObjectNode> properties, Set<String> optional) {
    for (RecordComponent component : record.getRecordComponents()) {
      if (component.getName().equals(AS_WRITTEN)) {
        continue; // the value is written so
      }
      String name = nameOf(component);
      addDerived(record, name, properties);
      String meaning = ComponentDocs.of(record, component.getName());
      properties.put(name, described(meaning, schemaOf(component.getGenericType())));
      if (LEFT_OUT_IF_EMPTY.contains(name) || component.getType() == Optional.class) {
        optional.add(name);
      }
    }
  }

  /** A component goes by its own name, but for the kind of part, since evidence has a kind too. */
  private static String nameOf(RecordComponent component) {
    return component.getDeclaringRecord() == Evidence.AlsoReplaced.class
            && component.getType() == PartKind.class
        ? "partKind"
        : component.getName();
  }

  /** What is not stored in the record but worked out from it stands before what it sums up. */
  private void addDerived(Class<?> record, String next, Map<String, ObjectNode> properties) {
    if (record == JobDecision.class && next.equals("decisions")) {
      properties.put(
          "complete", described("whether every part is decided and none stops work", flag()));
      properties.put("holds", described("the parts that stop work", array(partPath())));
    }
    if (record == Decision.class && next.equals("needed")) {
      properties.put("actions", described("everything there is to do, each once", array(line())));
    }
  }

  private ObjectNode schemaOf(Type type) {
    if (type instanceof ParameterizedType generic) {
      Class<?> raw = (Class<?>) generic.getRawType();
      Type argument = generic.getActualTypeArguments()[0];
      if (raw == List.class) {
        return array(schemaOf(argument));
      }
      return raw == Optional.class ? schemaOf(argument) : schemaOf(raw);
    }
    return schemaOf((Class<?>) type);
  }

  private ObjectNode schemaOf(Class<?> type) {
    if (type == boolean.class) {
      return flag();
    }
    if (type == String.class) {
      return line();
    }
    if (type == LocalDate.class) {
      return SchemaPieces.date("2026-11-20");
    }
    if (type == RuleSet.class) {
      return pattern("^" + JobAssembly.NAME.pattern() + "$", "us-federal");
    }
    if (type == Place.class) {
      return partPath();
    }
    if (type == WheelEndPath.class) {
      return define("wheelEnd", pattern(WHEEL_END_PATH, "tractor/axle2/left"));
    }
    if (type == Quantity.class) {
      return quantity();
    }
    if (type == Reading.class) {
      return define("reading", reading());
    }
    if (type == Evidence.class) {
      return define("evidence", evidence());
    }
    return type.isEnum() ? names(type) : define(definitionName(type), object(type));
  }

  private ObjectNode evidence() {
    ObjectNode evidence = SchemaPieces.NODES.objectNode();
    for (Class<?> kind : Evidence.class.getPermittedSubclasses()) {
      evidence.withArray("oneOf").add(evidence(kind));
    }
    return evidence;
  }

  private ObjectNode evidence(Class<?> kind) {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    Set<String> optional = new LinkedHashSet<>();
    properties.put("kind", constant(hyphenated(kind.getSimpleName())));
    if (kind == Evidence.Measured.class) {
      addComponents(Check.class, properties, optional);
    } else {
      addComponents(kind, properties, optional);
    }
    return SchemaPieces.object(properties, optional);
  }

  private ObjectNode reading() {
    Map<String, ObjectNode> properties = new LinkedHashMap<>();
    properties.put("value", described(ComponentDocs.of(Reading.class, "written"), quantity()));
    properties.put(
        "at", described(ComponentDocs.of(Reading.class, "station"), names(Station.class)));
    properties.put(
        "method", described(ComponentDocs.of(Reading.class, "method"), names(Method.class)));
    properties.put(
        "uncertainty", described(ComponentDocs.of(Reading.class, "uncertainty"), quantity()));
    properties.put(
        "reservoirPressure",
        described(ComponentDocs.of(Reading.class, "reservoirPressure"), quantity()));
    properties.put(
        "moment", described(ComponentDocs.of(Reading.class, "moment"), names(Moment.class)));
    return SchemaPieces.object(
        properties, List.of("at", "method", "uncertainty", "reservoirPressure", "moment"));
  }

  private ObjectNode quantity() {
    return define("quantity", SchemaPieces.shownQuantity());
  }

  private ObjectNode partPath() {
    return define("part", pattern(PART_PATH, "tractor/axle2/left/camshaft-seal/head-end/2"));
  }

  private ObjectNode names(Class<?> type) {
    return define(definitionName(type), choice(namesOf(type)));
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // only called for enums
  private static List<String> namesOf(Class<?> type) {
    return Names.of((Class) type).all();
  }

  private ObjectNode define(String name, ObjectNode schema) {
    definitions.put(name, schema);
    return ref(name);
  }

  private static ObjectNode flag() {
    return SchemaPieces.NODES.objectNode().put("type", "boolean");
  }

  private static ObjectNode line() {
    return SchemaPieces.NODES.objectNode().put("type", "string").put("minLength", 1);
  }

  private static String definitionName(Class<?> type) {
    String name = type.getSimpleName();
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  private static String hyphenated(String name) {
    return name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }
}
