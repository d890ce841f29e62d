package org.brakerules.harness.batch;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;

/**
 * Writes what a reason rests on. The part or wheel end that evidence speaks of is left out where it
 * is that of the answer itself.
 */
final class CompactEvidence {

  private final Place own;
  private final CompactLine line;
  private final JsonGenerator json;

  CompactEvidence(Place own, CompactLine line, JsonGenerator json) {
    this.own = own;
    this.line = line;
    this.json = json;
  }

  void write(List<Evidence> evidence) throws IOException {
    json.writeArrayFieldStart("evidence");
    for (Evidence one : evidence) {
      json.writeStartObject();
      fields(one);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void fields(Evidence evidence) throws IOException {
    if (evidence instanceof Evidence.Stated stated) {
      kind("stated");
      part(stated.part());
      property(stated.property(), stated.value());
    } else if (evidence instanceof Evidence.Built built) {
      kind("built");
      wheelEnd(built.wheelEnd());
      property(built.property(), built.value());
    } else if (evidence instanceof Evidence.Measured measured) {
      kind("measured");
      line.check(measured.check(), own, json);
    } else if (evidence instanceof Evidence.AlsoReplaced replaced) {
      kind("also-replaced");
      wheelEnd(replaced.wheelEnd());
      json.writeStringField("partKind", replaced.kind().id());
    } else if (evidence instanceof Evidence.WasDisturbed disturbed) {
      kind("was-disturbed");
      part(disturbed.part());
    } else if (evidence instanceof Evidence.UnlikePartner unlike) {
      kind("unlike-partner");
      wheelEnd(unlike.wheelEnd());
      json.writeStringField("matter", Names.of(unlike.matter()));
    } else if (evidence instanceof Evidence.ReadingsContradict readings) {
      contradict(readings);
    } else {
      throw new AssertionError("Evidence of an unknown kind: " + evidence);
    }
  }

  private void contradict(Evidence.ReadingsContradict readings) throws IOException {
    kind("readings-contradict");
    part(readings.part());
    json.writeStringField("contradiction", Names.of(readings.contradiction()));
    json.writeStringField("reading", readings.reading());
    json.writeStringField("otherReading", readings.otherReading());
  }

  private void kind(String kind) throws IOException {
    json.writeStringField("kind", kind);
  }

  private void part(Place part) throws IOException {
    if (!part.equals(own)) {
      json.writeStringField("part", part.toString());
    }
  }

  private void wheelEnd(WheelEndPath wheelEnd) throws IOException {
    if (!wheelEnd.equals(own.wheelEnd())) {
      json.writeStringField("wheelEnd", wheelEnd.toString());
    }
  }

  private void property(String property, String value) throws IOException {
    json.writeStringField("property", property);
    json.writeStringField("value", value);
  }
}
