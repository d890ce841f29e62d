package org.brakerules.linter.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.JobReader;

/** The sound wheel end as a tree of JSON, to be changed field by field. */
public final class CaseJob {

  /** The axle of the sound wheel end. */
  public static final int AXLE = 2;

  private static final String WHOLE_JOB = "";
  private static final String FIRST_UNIT = "/units/0";
  private static final String FIRST_AXLE = FIRST_UNIT + "/axles/0";
  private static final String LEFT = FIRST_AXLE + "/wheelEnds/0";
  private static final String RIGHT = FIRST_AXLE + "/wheelEnds/1";
  private static final String LAYOUT = "/layout";

  private final ObjectNode job;
  private final Origins origins = new Origins();

  private CaseJob(ObjectNode job) {
    this.job = job;
  }

  /**
   * The sound wheel end.
   *
   * @param soundWheelEnd the job with it
   */
  public static CaseJob sound(JsonNode soundWheelEnd) {
    return new CaseJob(soundWheelEnd.deepCopy());
  }

  /**
   * The job of a case.
   *
   * @param soundWheelEnd the job that it changes
   * @param changes what it changes
   * @throws InvalidCaseException if that cannot be changed
   */
  public static CaseJob of(JsonNode soundWheelEnd, CaseChanges changes) {
    CaseJob job = sound(soundWheelEnd);
    job.putAll(WHOLE_JOB, "/job", changes.job());
    job.putAll(FIRST_UNIT, "/unit", changes.unit());
    job.putAll(FIRST_AXLE, "/axle", changes.axle());
    job.putAll(LEFT + LAYOUT, "/layout", changes.layout());
    if (!changes.alone()) {
      job.addPartner(changes);
    }
    changes.remove().forEach(job::remove);
    job.changeParts(LEFT, "/change", changes.parts());
    return job;
  }

  /** The job itself. */
  public ObjectNode tree() {
    return job;
  }

  /** The layout of the wheel end. */
  public ObjectNode layout() {
    return object(LEFT + LAYOUT);
  }

  /** The axle of the wheel end. */
  public ObjectNode axle() {
    return object(FIRST_AXLE);
  }

  /** The part at a path below the wheel end; added if it is not there. */
  public ObjectNode part(String path) {
    return object(partAt(LEFT, path, ""));
  }

  /**
   * Reads the tree as a job.
   *
   * @throws org.brakerules.model.json.InvalidJobException if it is none
   */
  public BrakeJob read() {
    return JobReader.read(job.toString());
  }

  /**
   * Where in the case stands what the job has at a place, both as JSON Pointers (RFC 6901); empty,
   * the case as a whole, for what comes from the sound wheel end.
   */
  public String origin(String pointer) {
    return origins.of(pointer);
  }

  /** The same sound wheel end across the axle, with the shaft of the other hand. */
  private void addPartner(CaseChanges changes) {
    ObjectNode partner = object(LEFT).deepCopy();
    array(FIRST_AXLE + "/wheelEnds").add(partner.put("side", "right"));
    object(RIGHT + LAYOUT).put("camshaftHand", "right");
    object(partAt(RIGHT, "camshaft", "")).put("hand", "right");
    origins.addEach(RIGHT + LAYOUT, "/layout", changes.layout().keySet());
    putAll(RIGHT + LAYOUT, "/partnerLayout", changes.partnerLayout());
    changeParts(RIGHT, "/partner", changes.partner());
  }

  private void changeParts(String end, String origin, Map<String, Map<String, JsonNode>> parts) {
    parts.forEach(
        (path, fields) -> {
          String from = origin + "/" + Origins.step(path);
          String part = partAt(end, path, from);
          origins.add(part, from);
          putAll(part, from, fields);
        });
  }

  private void remove(String path) {
    int index = indexOf(LEFT, path, "/remove");
    if (index < 0) {
      throw new InvalidCaseException(
          "/remove", "the sound wheel end has no " + path, "take it out of the list");
    }
    array(LEFT + "/parts").remove(index);
  }

  private String partAt(String end, String path, String origin) {
    int index = indexOf(end, path, origin);
    ArrayNode parts = array(end + "/parts");
    if (index < 0) {
      index = parts.size();
      add(parts, PartPath.parse(path, origin));
    }
    return end + "/parts/" + index;
  }

  private int indexOf(String end, String path, String origin) {
    PartPath wanted = PartPath.parse(path, origin);
    ArrayNode parts = array(end + "/parts");
    int index = parts.size() - 1;
    while (index >= 0 && !PartPath.of(parts.get(index)).equals(wanted)) {
      index--;
    }
    return index;
  }

  private static void add(ArrayNode parts, PartPath path) {
    ObjectNode part = parts.addObject().put("part", path.kind());
    if (!path.station().isEmpty()) {
      part.put("station", path.station());
    }
    if (path.number() > 1) {
      part.put("number", path.number());
    }
  }

  private void putAll(String owner, String origin, Map<String, JsonNode> fields) {
    if (fields.isEmpty()) {
      return;
    }
    ObjectNode changed = object(owner);
    fields.forEach(
        (name, value) -> {
          if (value.isNull()) {
            changed.remove(name);
          } else {
            changed.set(name, value.deepCopy());
          }
        });
    origins.addEach(owner, origin, fields.keySet());
  }

  private ObjectNode object(String pointer) {
    if (job.at(pointer) instanceof ObjectNode object) {
      return object;
    }
    throw noMore(pointer);
  }

  private ArrayNode array(String pointer) {
    if (job.at(pointer) instanceof ArrayNode array) {
      return array;
    }
    throw noMore(pointer);
  }

  private InvalidCaseException noMore(String pointer) {
    return new InvalidCaseException(
        origin(pointer),
        "the job has no left wheel end of axle 2 any more, with its layout and parts",
        "leave that one as it is, and change it under layout and change");
  }
}
