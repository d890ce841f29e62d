package org.brakerules.harness.batch;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.harness.batch.CompactDecision.OpenPoint;
import org.brakerules.harness.batch.CompactDecision.Part;
import org.brakerules.harness.batch.CompactDecision.Reason;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.part.Place;

/** Writes an answer as one line of the compact form. What is empty or false is left out. */
final class CompactLine {

  private static final JsonFactory FACTORY = new JsonFactory();

  private final LimitNames limits;

  CompactLine(LimitNames limits) {
    this.limits = limits;
  }

  /** Writes the line with its line feed; the stream is left open. */
  void write(long line, CompactDecision decision, OutputStream out) throws IOException {
    try (JsonGenerator json =
        FACTORY.createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)) {
      json.writeStartObject();
      json.writeNumberField("line", line);
      if (!decision.reference().isEmpty()) {
        json.writeStringField("reference", decision.reference());
      }
      json.writeStringField("date", decision.date().toString());
      json.writeStringField("ruleSet", decision.ruleSet());
      json.writeBooleanField("complete", decision.complete());
      json.writeArrayFieldStart("parts");
      for (Part part : decision.parts()) {
        part(part, json);
      }
      json.writeEndArray();
      texts("cautions", decision.cautions(), json);
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }

  private void part(Part part, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("part", part.part().toString());
    json.writeStringField("disposition", Names.of(part.disposition()));
    if (part.hold()) {
      json.writeBooleanField("hold", true);
    }
    json.writeStringField("road", Names.of(part.road()));
    reasons(part, json);
    checks(part, json);
    open(part.open(), json);
    json.writeEndObject();
  }

  private void reasons(Part part, JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("reasons");
    for (Reason reason : part.reasons()) {
      json.writeStartObject();
      json.writeStringField("rule", reason.rule());
      json.writeStringField("verdict", Names.of(reason.verdict()));
      if (!reason.evidence().isEmpty()) {
        new CompactEvidence(part.part(), this, json).write(reason.evidence());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void checks(Part part, JsonGenerator json) throws IOException {
    if (!part.checks().isEmpty()) {
      json.writeArrayFieldStart("checks");
      for (Check check : part.checks()) {
        json.writeStartObject();
        check(check, part.part(), json);
        json.writeEndObject();
      }
      json.writeEndArray();
    }
  }

  /** Writes the fields of a check; the part it speaks of only if it is another. */
  void check(Check check, Place own, JsonGenerator json) throws IOException {
    if (!check.part().equals(own)) {
      json.writeStringField("part", check.part().toString());
    }
    json.writeStringField("property", check.property());
    json.writeStringField("status", Names.of(check.status()));
    limit(check, json);
    if (check.reading().isPresent()) {
      json.writeStringField("reading", check.reading().get().written());
    }
    if (check.margin().isPresent()) {
      json.writeStringField("margin", check.margin().get().toString());
    }
  }

  private void limit(Check check, JsonGenerator json) throws IOException {
    if (check.limit().isEmpty()) {
      json.writeStringField("limit", check.limitId());
      return;
    }
    LimitInForce limit = check.limit().get();
    Optional<String> name = limits.name(limit);
    if (name.isPresent()) {
      json.writeStringField("limit", name.get());
      return;
    }
    json.writeObjectFieldStart("limit");
    json.writeStringField("id", limit.id());
    json.writeStringField("comparison", Names.of(limit.comparison()));
    json.writeStringField("value", limit.written());
    json.writeStringField("source", limit.source().citation());
    if (limit.source().id().equals(Key.MAKER)) {
      json.writeStringField("document", limit.source().title());
    }
    json.writeEndObject();
  }

  /** Points that are open for the same reason stand together, and the reason once. */
  private static void open(List<OpenPoint> open, JsonGenerator json) throws IOException {
    if (open.isEmpty()) {
      return;
    }
    Map<String, List<String>> points = new LinkedHashMap<>();
    open.forEach(
        one -> points.computeIfAbsent(one.why(), why -> new ArrayList<>()).add(one.point()));
    json.writeArrayFieldStart("open");
    for (Map.Entry<String, List<String>> group : points.entrySet()) {
      json.writeStartObject();
      json.writeStringField("why", group.getKey());
      texts("points", group.getValue(), json);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void texts(String name, List<String> texts, JsonGenerator json)
      throws IOException {
    if (!texts.isEmpty()) {
      json.writeArrayFieldStart(name);
      for (String text : texts) {
        json.writeString(text);
      }
      json.writeEndArray();
    }
  }
}
