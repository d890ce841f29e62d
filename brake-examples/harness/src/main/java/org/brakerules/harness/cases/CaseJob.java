package org.brakerules.harness.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.JobReader;

/** The sound wheel end as a tree of JSON, to be changed field by field. */
public final class CaseJob {

  /** The axle of the sound wheel end. */
  static final int AXLE = 2;

  private static final int LEFT = 0;
  private static final int RIGHT = 1;

  private final ObjectNode job;

  private CaseJob(ObjectNode job) {
    this.job = job;
  }

  /** The sound wheel end. */
  public static CaseJob sound() {
    return sound(CaseFiles.ofThisArtifact().soundWheelEnd());
  }

  private static CaseJob sound(JsonNode soundWheelEnd) {
    return new CaseJob(soundWheelEnd.deepCopy());
  }

  static CaseJob of(JsonNode soundWheelEnd, RuleCase.Changes changes) {
    CaseJob job = sound(soundWheelEnd);
    changes.job().forEach((name, value) -> put(job.job, name, value));
    changes.unit().forEach((name, value) -> put(job.unit(), name, value));
    changes.axle().forEach((name, value) -> put(job.axle(), name, value));
    changes.layout().forEach((name, value) -> put(job.layout(), name, value));
    if (!changes.alone()) {
      job.addPartner();
      changes.partnerLayout().forEach((name, value) -> put(job.layout(RIGHT), name, value));
      changes.partner().forEach((path, fields) -> job.change(RIGHT, path, fields));
    }
    changes.remove().forEach(job::remove);
    changes.parts().forEach((path, fields) -> job.change(LEFT, path, fields));
    return job;
  }

  /** The job itself. */
  public ObjectNode tree() {
    return job;
  }

  /** The layout of the wheel end. */
  public ObjectNode layout() {
    return layout(LEFT);
  }

  private ObjectNode layout(int end) {
    return wheelEnd(end).withObjectProperty("layout");
  }

  private ObjectNode unit() {
    return (ObjectNode) job.at("/units/0");
  }

  /** The axle of the wheel end. */
  public ObjectNode axle() {
    return (ObjectNode) unit().at("/axles/0");
  }

  /** The part at a path below the wheel end; added if it is not there. */
  public ObjectNode part(String path) {
    return part(LEFT, path);
  }

  private ObjectNode part(int end, String path) {
    int index = indexOf(end, path);
    return index < 0 ? add(end, PartPath.parse(path)) : (ObjectNode) parts(end).get(index);
  }

  /**
   * Reads the tree as a job.
   *
   * @throws org.brakerules.model.json.InvalidJobException if it is none
   */
  public BrakeJob read() {
    return JobReader.read(job.toString());
  }

  /** The same sound wheel end across the axle, with the shaft of the other hand. */
  private void addPartner() {
    ObjectNode partner = wheelEnd(LEFT).deepCopy();
    ((ArrayNode) axle().get("wheelEnds")).add(partner.put("side", "right"));
    layout(RIGHT).put("camshaftHand", "right");
    part(RIGHT, "camshaft").put("hand", "right");
  }

  private void change(int end, String path, Map<String, JsonNode> fields) {
    ObjectNode part = part(end, path);
    fields.forEach((name, value) -> put(part, name, value));
  }

  private void remove(String path) {
    int index = indexOf(LEFT, path);
    if (index < 0) {
      throw new InvalidCaseException("remove: the sound wheel end has no " + path);
    }
    parts(LEFT).remove(index);
  }

  private int indexOf(int end, String path) {
    PartPath wanted = PartPath.parse(path);
    ArrayNode parts = parts(end);
    int index = parts.size() - 1;
    while (index >= 0 && !PartPath.of(parts.get(index)).equals(wanted)) {
      index--;
    }
    return index;
  }

  private ObjectNode add(int end, PartPath path) {
    ObjectNode part = parts(end).addObject().put("part", path.kind());
    if (!path.station().isEmpty()) {
      part.put("station", path.station());
    }
    if (path.number() > 1) {
      part.put("number", path.number());
    }
    return part;
  }

  private ObjectNode wheelEnd(int end) {
    return (ObjectNode) axle().get("wheelEnds").get(end);
  }

  private ArrayNode parts(int end) {
    return (ArrayNode) wheelEnd(end).get("parts");
  }

  private static void put(ObjectNode owner, String name, JsonNode value) {
    if (value.isNull()) {
      owner.remove(name);
    } else {
      owner.set(name, value.deepCopy());
    }
  }
}
