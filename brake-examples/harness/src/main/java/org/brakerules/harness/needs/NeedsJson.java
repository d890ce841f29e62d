package org.brakerules.harness.needs;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.brakerules.InspectionPoint;
import org.brakerules.harness.PrettyJson;
import org.brakerules.model.decision.LimitInForce;

/** Inspection points as JSON. */
public final class NeedsJson {

  private NeedsJson() {}

  /** Writes an array with one object for each point. */
  public static String of(List<InspectionPoint> points) {
    ArrayNode array = JsonNodeFactory.instance.arrayNode();
    points.forEach(point -> point(point, array.addObject()));
    return PrettyJson.of(array);
  }

  private static void point(InspectionPoint point, ObjectNode json) {
    json.put("id", point.id());
    json.put("part", point.part().id());
    json.put("station", point.station().id());
    json.put("task", name(point.task()));
    json.put("property", point.property());
    json.put("what", point.what());
    json.put("at", point.at().id());
    ArrayNode methods = json.putArray("methods");
    point.methods().forEach(method -> methods.add(method.id()));
    ArrayNode conditions = json.putArray("conditions");
    point.conditions().forEach(conditions::add);
    json.put("instrument", point.instrument());
    json.put("how", point.how());
    json.put("from", name(point.from()));
    ArrayNode limits = json.putArray("limits");
    point.limits().forEach(limit -> limit(limit, limits.addObject()));
  }

  private static void limit(LimitInForce limit, ObjectNode json) {
    json.put("id", limit.id());
    json.put("comparison", limit.comparison().inWords());
    json.put("value", limit.written());
    json.put("source", limit.source().citation());
    json.put("standing", name(limit.source().standing()));
  }

  private static String name(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
