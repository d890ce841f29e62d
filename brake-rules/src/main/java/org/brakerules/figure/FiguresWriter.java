package org.brakerules.figure;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.brakerules.calc.Working;

/** Writes figures as JSON, on one line. Every value is a text with its unit. */
public final class FiguresWriter {

  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator out;

  private FiguresWriter(JsonGenerator out) {
    this.out = out;
  }

  /** The figures of a job. */
  public static String write(JobFigures figures) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      new FiguresWriter(out).job(figures);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void job(JobFigures job) throws IOException {
    out.writeStartObject();
    out.writeObjectFieldStart("ruleBase");
    out.writeStringField("version", job.ruleBase().version());
    out.writeStringField("fingerprint", job.ruleBase().fingerprint());
    out.writeEndObject();
    if (!job.reference().isEmpty()) {
      out.writeStringField("reference", job.reference());
    }
    out.writeStringField("date", job.date().toString());
    out.writeStringField("ruleSet", job.ruleSet().id());
    out.writeArrayFieldStart("wheelEnds");
    for (WheelEndFigures end : job.wheelEnds()) {
      out.writeStartObject();
      out.writeStringField("wheelEnd", end.wheelEnd().toString());
      figures("figures", end.figures());
      out.writeEndObject();
    }
    out.writeEndArray();
    figures("vehicle", job.vehicle());
    out.writeEndObject();
  }

  private void figures(String name, List<Figure> figures) throws IOException {
    out.writeArrayFieldStart(name);
    for (Figure figure : figures) {
      figure(figure);
    }
    out.writeEndArray();
  }

  private void figure(Figure figure) throws IOException {
    Working working = figure.working();
    out.writeStartObject();
    out.writeStringField("id", working.id());
    if (!figure.about().isEmpty()) {
      out.writeStringField("about", figure.about());
    }
    out.writeStringField("title", working.title());
    named("given", working.given());
    named("assumed", working.assumed());
    out.writeStringField("formula", working.formula());
    texts("steps", working.steps());
    named("results", working.results());
    texts("missing", working.missing());
    out.writeObjectFieldStart("basis");
    out.writeStringField("source", working.basis().source());
    out.writeStringField("standing", id(working.basis().standing()));
    out.writeStringField("kind", id(working.basis().kind()));
    out.writeEndObject();
    out.writeEndObject();
  }

  private void named(String name, List<Working.Named> values) throws IOException {
    out.writeArrayFieldStart(name);
    for (Working.Named value : values) {
      out.writeStartObject();
      out.writeStringField("name", value.name());
      out.writeStringField("value", value.value());
      out.writeEndObject();
    }
    out.writeEndArray();
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
