package org.brakerules.vehicle;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;

/** Writes the status of a vehicle as JSON, on one line. Every length is a text with its unit. */
public final class VehicleStatusWriter {

  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator out;

  private VehicleStatusWriter(JsonGenerator out) {
    this.out = out;
  }

  /** The status of one vehicle. */
  public static String write(VehicleStatus status) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      new VehicleStatusWriter(out).vehicle(status);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void vehicle(VehicleStatus status) throws IOException {
    out.writeStartObject();
    out.writeObjectFieldStart("ruleBase");
    out.writeStringField("version", status.ruleBase().version());
    out.writeStringField("fingerprint", status.ruleBase().fingerprint());
    out.writeEndObject();
    unlessEmpty("reference", status.reference());
    out.writeStringField("date", status.date().toString());
    out.writeStringField("ruleSet", status.ruleSet().id());
    out.writeArrayFieldStart("axles");
    for (AxleStatus axle : status.axles()) {
      axle(axle);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("brakes");
    for (BrakeCount brake : status.brakes()) {
      brake(brake);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("criteria");
    for (CriterionStatus criterion : status.criteria()) {
      criterion(criterion);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void axle(AxleStatus axle) throws IOException {
    out.writeStartObject();
    out.writeStringField("axle", axle.path());
    out.writeStringField("kind", id(axle.kind()));
    out.writeArrayFieldStart("matches");
    for (AxleMatch match : axle.matches()) {
      out.writeStartObject();
      out.writeStringField("matter", id(match.matter()));
      out.writeStringField("likeness", id(match.likeness()));
      unlessEmpty("left", match.left());
      unlessEmpty("right", match.right());
      out.writeEndObject();
    }
    out.writeEndArray();
    unlessEmpty("leftStroke", axle.leftStroke().map(Object::toString).orElse(""));
    unlessEmpty("rightStroke", axle.rightStroke().map(Object::toString).orElse(""));
    unlessEmpty("strokesApart", axle.strokesApart().map(Object::toString).orElse(""));
    out.writeEndObject();
  }

  private void brake(BrakeCount brake) throws IOException {
    out.writeStartObject();
    out.writeStringField("wheelEnd", brake.wheelEnd().toString());
    out.writeStringField("stroke", id(brake.stroke()));
    unlessEmpty("beyond", brake.beyond().map(Object::toString).orElse(""));
    texts("otherwise", brake.otherwise());
    out.writeEndObject();
  }

  private void criterion(CriterionStatus criterion) throws IOException {
    out.writeStartObject();
    out.writeStringField("id", criterion.id());
    out.writeStringField("title", criterion.title());
    out.writeStringField("answer", id(criterion.answer()));
    out.writeStringField("says", criterion.says());
    out.writeStringField("finding", criterion.finding());
    texts("open", criterion.open());
    out.writeStringField("ask", criterion.ask());
    out.writeObjectFieldStart("source");
    out.writeStringField("id", criterion.source().id());
    unlessEmpty("clause", criterion.source().clause());
    out.writeStringField("title", criterion.source().title());
    out.writeStringField("standing", id(criterion.source().standing()));
    out.writeEndObject();
    out.writeEndObject();
  }

  private void unlessEmpty(String name, String text) throws IOException {
    if (!text.isEmpty()) {
      out.writeStringField(name, text);
    }
  }

  private void texts(String name, List<String> texts) throws IOException {
    out.writeArrayFieldStart(name);
    for (String text : texts) {
      out.writeString(text);
    }
    out.writeEndArray();
  }

  private static String id(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
