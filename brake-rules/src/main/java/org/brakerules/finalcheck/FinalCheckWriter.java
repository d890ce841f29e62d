package org.brakerules.finalcheck;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.brakerules.model.decision.Source;

/** Writes a final check as JSON, on one line. */
public final class FinalCheckWriter {

  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator out;

  private FinalCheckWriter(JsonGenerator out) {
    this.out = out;
  }

  /** The final check of a job. */
  public static String write(FinalCheck check) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      new FinalCheckWriter(out).all(check);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void all(FinalCheck check) throws IOException {
    out.writeStartObject();
    out.writeObjectFieldStart("ruleBase");
    out.writeStringField("version", check.ruleBase().version());
    out.writeStringField("fingerprint", check.ruleBase().fingerprint());
    out.writeEndObject();
    if (!check.reference().isEmpty()) {
      out.writeStringField("reference", check.reference());
    }
    out.writeStringField("date", check.date().toString());
    out.writeStringField("ruleSet", check.ruleSet().id());
    out.writeBooleanField("released", check.released());
    out.writeArrayFieldStart("places");
    for (PlaceResult place : check.places()) {
      place(place);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void place(PlaceResult place) throws IOException {
    out.writeStartObject();
    out.writeStringField("on", place.on());
    if (!place.by().isEmpty()) {
      out.writeStringField("by", place.by());
    }
    out.writeBooleanField("released", place.released());
    texts("keptBackBy", place.keptBackBy());
    out.writeArrayFieldStart("checks");
    for (CheckResult check : place.checks()) {
      check(check);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void check(CheckResult check) throws IOException {
    out.writeStartObject();
    out.writeStringField("id", check.id());
    out.writeStringField("question", check.question());
    out.writeStringField("how", check.how());
    out.writeStringField("status", id(check.status()));
    out.writeStringField("found", check.found());
    texts(
        "limits",
        check.limits().stream().map(limit -> limit.id() + " " + limit.inWords()).toList());
    out.writeStringField("consequence", check.consequence());
    out.writeStringField("remedy", check.remedy());
    out.writeBooleanField("releases", check.releases());
    texts("source", check.source().stream().map(Source::citation).toList());
    out.writeEndObject();
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
