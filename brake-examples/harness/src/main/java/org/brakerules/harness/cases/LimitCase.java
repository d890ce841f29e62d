package org.brakerules.harness.cases;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.brakerules.limit.Limit;
import org.brakerules.linter.cases.CaseJob;
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

  private static final String STATION = "part.station=";

  /** The job of the wheel end, which has a part that the limit is for. */
  BrakeJob job() {
    CaseJob job = fitting();
    ObjectNode written = job.part(path()).putObject(limit.property());
    written.put("value", reading.toString());
    limit.station().ifPresent(at -> written.put("at", at.id()));
    limit.methods().stream()
        .findFirst()
        .map(Method::id)
        .ifPresent(one -> written.put("method", one));
    limit.moment().ifPresent(one -> written.put("moment", one.id()));
    if (limit.methods().contains(Method.FULL_APPLICATION)) {
      written.put("reservoirPressure", "90 psi"); // inside the band of every rule set
    }
    return job.read();
  }

  /** The same job before the reading was taken. */
  BrakeJob jobWithoutReading() {
    CaseJob job = fitting();
    job.part(path()).remove(limit.property());
    return job.read();
  }

  private CaseJob fitting() {
    CaseJob job = CaseJob.sound(CaseFiles.ofThisArtifact().soundWheelEnd());
    job.tree().put("ruleSet", limit.ruleSet().map(RuleSet::id).orElse("us-federal"));
    limit.from().or(limit::to).ifPresent(day -> job.tree().put("date", day.toString()));
    ObjectNode part = job.part(path());
    for (String term : limit.appliesTo().split(";", -1)) {
      apply(term.strip(), job, part);
    }
    return job;
  }

  /** The first part of the kind that the limit is for. */
  String path() {
    PartKind kind = limit.part();
    Optional<Station> station =
        kind.hasStations()
            ? kind.stations().stream().filter(this::isFor).findFirst()
            : Optional.empty();
    return kind.id() + station.map(one -> "/" + one.id()).orElse("");
  }

  private boolean isFor(Station station) {
    return !limit.appliesTo().contains(STATION)
        || limit.appliesTo().contains(STATION + station.id());
  }

  /** Builds the brake as a selector wants it, such as {@code layout.camshaft=tube|split}. */
  private static void apply(String term, CaseJob job, ObjectNode part) {
    if (term.isEmpty() || term.startsWith(STATION)) {
      return;
    }
    List<String> sides = List.of(term.split("="));
    String value = fitting(sides.get(1).split("\\|", -1)[0].strip());
    String attribute = sides.get(0).strip();
    String name = attribute.substring(attribute.lastIndexOf('.') + 1);
    switch (attribute.substring(0, attribute.lastIndexOf('.'))) {
      case "layout" -> job.layout().put(name, value);
      case "layout.chamber" -> job.layout().withObjectProperty("chamber").put(name, value);
      case "axle" -> job.axle().put(name, value);
      default -> part.put(name, value);
    }
  }

  /** A value that fits a term; what is refused is a stroke, and no chamber has this one. */
  private static String fitting(String wanted) {
    return wanted.startsWith("not ") ? "2.7 in" : wanted;
  }

  @Override
  public String toString() {
    return "%s %s, %s: %s %s"
        .formatted(limit.id(), limit.inWords(), side, reading, passes ? "is inside" : "is beyond");
  }
}
