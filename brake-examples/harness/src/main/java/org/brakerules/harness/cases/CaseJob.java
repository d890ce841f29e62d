package org.brakerules.harness.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.JobReader;

/** The sound wheel end as a tree of JSON, to be changed field by field. */
public final class CaseJob {

  private final ObjectNode job;

  private CaseJob(ObjectNode job) {
    this.job = job;
  }

  /** The sound wheel end. */
  public static CaseJob sound() {
    return new CaseJob(CaseFiles.baseline());
  }

  static CaseJob of(RuleCase.Changes changes) {
    CaseJob job = sound();
    changes.job().forEach((name, value) -> put(job.job, name, value));
    changes.axle().forEach((name, value) -> put(job.axle(), name, value));
    changes.layout().forEach((name, value) -> put(job.layout(), name, value));
    changes.remove().forEach(job::remove);
    changes.parts().forEach(job::change);
    return job;
  }

  /** The job itself. */
  public ObjectNode tree() {
    return job;
  }

  /** The layout of the wheel end. */
  public ObjectNode layout() {
    return wheelEnd().withObjectProperty("layout");
  }

  /** The axle of the wheel end. */
  public ObjectNode axle() {
    return (ObjectNode) job.at("/units/0/axles/0");
  }

  /** The part at a path below the wheel end; added if it is not there. */
  public ObjectNode part(String path) {
    int index = indexOf(path);
    return index < 0 ? add(PartPath.parse(path)) : (ObjectNode) parts().get(index);
  }

  /**
   * Reads the tree as a job.
   *
   * @throws org.brakerules.model.json.InvalidJobException if it is none
   */
  public BrakeJob read() {
    return JobReader.read(job.toString());
  }

  private void change(String path, Map<String, JsonNode> fields) {
    ObjectNode part = part(path);
    fields.forEach((name, value) -> put(part, name, value));
  }

  private void remove(String path) {
    int index = indexOf(path);
    if (index < 0) {
      throw new InvalidCaseException("remove: the sound wheel end has no " + path);
    }
    parts().remove(index);
  }

  private int indexOf(String path) {
    PartPath wanted = PartPath.parse(path);
    ArrayNode parts = parts();
    int index = parts.size() - 1;
    while (index >= 0 && !PartPath.of(parts.get(index)).equals(wanted)) {
      index--;
    }
    return index;
  }

  private ObjectNode add(PartPath path) {
    ObjectNode part = parts().addObject().put("part", path.kind());
    if (!path.station().isEmpty()) {
      part.put("station", path.station());
    }
    if (path.number() > 1) {
      part.put("number", path.number());
    }
    return part;
  }

  private ObjectNode wheelEnd() {
    return (ObjectNode) axle().at("/wheelEnds/0");
  }

  private ArrayNode parts() {
    return (ArrayNode) wheelEnd().get("parts");
  }

  private static void put(ObjectNode owner, String name, JsonNode value) {
    if (value.isNull()) {
      owner.remove(name);
    } else {
      owner.set(name, value);
    }
  }
}
