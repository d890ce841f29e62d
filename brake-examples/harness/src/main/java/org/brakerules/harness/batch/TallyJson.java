package org.brakerules.harness.batch;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Iterator;
import java.util.Map;
import org.brakerules.harness.batch.Tally.Count;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.part.PartKind;

/** The numbers of a tally as JSON, and back. */
final class TallyJson {

  static final String REJECTS = "rejects";
  static final String PARTS = "parts";
  static final String REASONS = "reasons";
  static final String HOLDS = "holds";

  private TallyJson() {}

  static ObjectNode of(Tally tally) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    for (Count count : Count.values()) {
      json.put(count.field(), tally.count(count));
    }
    ObjectNode rejects = json.putObject(REJECTS);
    for (Reject.Kind kind : Reject.Kind.values()) {
      rejects.put(Names.of(kind), tally.count(kind));
    }
    ObjectNode parts = json.putObject(PARTS);
    tally.kinds().forEach((kind, count) -> put(count, parts.putObject(kind.id())));
    ObjectNode reasons = json.putObject(REASONS);
    tally.reasons().forEach(one -> reasons.put(one.getKey(), one.getValue()));
    return json;
  }

  private static void put(KindCount count, ObjectNode json) {
    for (Disposition disposition : Disposition.values()) {
      json.put(Names.of(disposition), count.count(disposition));
    }
    json.put(HOLDS, count.holds());
  }

  /**
   * Reads what {@link #of} made.
   *
   * @throws IllegalArgumentException if it is something else
   */
  static Tally read(JsonNode json) {
    Tally tally = new Tally();
    for (Count count : Count.values()) {
      tally.add(count, number(json, count.field()));
    }
    for (Reject.Kind kind : Reject.Kind.values()) {
      tally.add(kind, number(json.path(REJECTS), Names.of(kind)));
    }
    for (Iterator<String> ids = json.path(PARTS).fieldNames(); ids.hasNext(); ) {
      String id = ids.next();
      read(json.path(PARTS).path(id), tally.kind(kind(id)));
    }
    for (Map.Entry<String, JsonNode> reason : json.path(REASONS).properties()) {
      tally.addReason(reason.getKey(), number(json.path(REASONS), reason.getKey()));
    }
    return tally;
  }

  private static void read(JsonNode json, KindCount count) {
    for (Disposition disposition : Disposition.values()) {
      count.add(disposition, number(json, Names.of(disposition)));
    }
    count.addHolds(number(json, HOLDS));
  }

  private static PartKind kind(String id) {
    return PartKind.byId(id)
        .orElseThrow(() -> new IllegalArgumentException("\"" + id + "\" is no kind of part"));
  }

  /** A whole number that has to be there. */
  static long number(JsonNode json, String name) {
    JsonNode value = json.path(name);
    if (!value.isIntegralNumber()) {
      throw new IllegalArgumentException("\"" + name + "\" is no whole number");
    }
    return value.longValue();
  }
}
