package org.brakerules.harness.cases;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.brakerules.limit.Limit;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;

/**
 * A sound wheel end with one reading near one limit.
 *
 * @param limit the limit
 * @param side on which side of the limit the reading lies
 * @param reading the reading
 * @param passes whether it is inside the limit
 */
record LimitCase(Limit limit, String side, Quantity<?> reading, boolean passes) {

  BrakeJob job() {
    CaseJob job = CaseJob.sound();
    job.tree().put("ruleSet", limit.ruleSet().map(RuleSet::id).orElse("us-federal"));
    limit.from().ifPresent(first -> job.tree().put("date", first.toString()));
    ObjectNode part = job.part(path());
    for (String term : limit.appliesTo().split(";")) {
      apply(term.strip(), job, part);
    }
    ObjectNode written = part.putObject(limit.property()).put("value", reading.toString());
    limit.station().ifPresent(at -> written.put("at", at.id()));
    limit.methods().stream()
        .findFirst()
        .map(Method::id)
        .ifPresent(one -> written.put("method", one));
    return job.read();
  }

  /** The first part of the kind that the limit is for. */
  String path() {
    PartKind kind = limit.part();
    Optional<Station> station =
        kind.hasStations() ? kind.stations().stream().findFirst() : Optional.empty();
    return kind.id() + station.map(one -> "/" + one.id()).orElse("");
  }

  /** Builds the brake as a selector wants it, such as {@code layout.camshaft=tube|split}. */
  private static void apply(String term, CaseJob job, ObjectNode part) {
    if (term.isEmpty()) {
      return;
    }
    List<String> sides = List.of(term.split("="));
    String value = sides.get(1).split("\\|")[0].strip();
    String attribute = sides.get(0).strip();
    String name = attribute.substring(attribute.indexOf('.') + 1);
    switch (attribute.substring(0, attribute.indexOf('.'))) {
      case "layout" -> job.layout().put(name, value);
      case "axle" -> job.axle().put(name, value);
      default -> part.put(name, value);
    }
  }

  @Override
  public String toString() {
    return "%s %s, %s: %s %s"
        .formatted(
            limit.id(),
            limit.inForce().inWords(),
            side,
            reading,
            passes ? "is inside" : "is beyond");
  }
}
