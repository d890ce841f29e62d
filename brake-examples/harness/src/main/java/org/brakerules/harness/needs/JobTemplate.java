package org.brakerules.harness.needs;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.List;
import org.brakerules.InspectionPoint;
import org.brakerules.harness.PrettyJson;
import org.brakerules.model.decision.Needed.Task;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.json.JobWriter;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;

/**
 * A job to fill in: every part of the brake with every property its decision needs. Reference and
 * readings are blank, and a job with blanks is refused; a sign is not checked until someone looked.
 */
public final class JobTemplate {

  /** Blank, so that a job that is not filled in is refused wherever something is left out. */
  private static final String FILL_IN = "";

  private static final WheelEndPath WHEEL_END = WheelEndPath.of(1, Side.LEFT);

  private final Inspection inspection;
  private final List<InspectionPoint> points;

  private JobTemplate(Inspection inspection, List<InspectionPoint> points) {
    this.inspection = inspection;
    this.points = points;
  }

  /** Writes the job as JSON. */
  public static String of(Inspection inspection, List<InspectionPoint> points) {
    try {
      return PrettyJson.of(new JobTemplate(inspection, points).job());
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private ObjectNode job() throws JsonProcessingException {
    ObjectNode job = (ObjectNode) new ObjectMapper().readTree(JobWriter.write(withoutParts()));
    job.put("reference", FILL_IN);
    if (inspection.ruleSet().isEmpty()) {
      job.put("ruleSet", FILL_IN);
    }
    ObjectNode unit = (ObjectNode) job.at("/units/0");
    points.stream()
        .filter(JobTemplate::isOfVehicle)
        .forEach(point -> unit.put(point.property(), FILL_IN));
    ObjectNode wheelEnd = (ObjectNode) unit.at("/axles/0/wheelEnds/0");
    layout(wheelEnd.withObjectProperty("layout"));
    parts(wheelEnd.putArray("parts"));
    return job;
  }

  private BrakeJob withoutParts() {
    return BrakeJob.builder()
        .date(inspection.date())
        .ruleSet(inspection.ruleSet().map(RuleSet::id).orElse("any"))
        .scope(inspection.scope())
        .wheelEnd(new WheelEnd(WHEEL_END, inspection.layout(), List.of()))
        .build();
  }

  private void layout(ObjectNode layout) {
    points.stream()
        .filter(JobTemplate::isOfLayout)
        .filter(point -> !layout.has(point.property()))
        .forEach(point -> layout.put(point.property(), "unknown"));
  }

  private void parts(ArrayNode parts) {
    for (Place place : inspection.layout().expectedParts(WHEEL_END, inspection.scope())) {
      ObjectNode part = parts.addObject().put("part", place.kind().id());
      if (place.kind().hasStations()) {
        part.put("station", place.station().id());
      }
      part.put("condition", "as-found");
      points.stream()
          .filter(point -> isOf(place, point) && !isOfLayout(point) && !isOfVehicle(point))
          .forEach(point -> property(part, point));
    }
  }

  private static void property(ObjectNode part, InspectionPoint point) {
    switch (point.task()) {
      case LOOK -> part.put(point.property(), "not-checked");
      case STATE -> part.put(point.property(), "unknown");
      case MEASURE -> reading(part.putObject(point.property()), point);
    }
  }

  private static void reading(ObjectNode reading, InspectionPoint point) {
    reading.put("value", FILL_IN);
    if (point.at() != Station.WHOLE_PART) {
      reading.put("at", point.at().id());
    }
    point.methods().stream().findFirst().ifPresent(method -> reading.put("method", method.id()));
    if (point.methods().contains(Method.FULL_APPLICATION)) {
      reading.put("reservoirPressure", FILL_IN);
    }
    if (!point.conditions().isEmpty()) {
      reading.put("moment", FILL_IN);
    }
  }

  private static boolean isOf(Place place, InspectionPoint point) {
    return point.part() == place.kind() && point.station() == place.station();
  }

  static boolean isOfVehicle(InspectionPoint point) {
    return point.task() == Task.STATE && point.id().contains(".vehicle.");
  }

  static boolean isOfLayout(InspectionPoint point) {
    return point.task() == Task.STATE && point.id().contains(".layout.");
  }
}
