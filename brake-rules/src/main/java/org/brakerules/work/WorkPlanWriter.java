package org.brakerules.work;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Source;
import org.brakerules.model.part.Place;

/** Writes the order of work as JSON, on one line. */
public final class WorkPlanWriter {

  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator out;

  private WorkPlanWriter(JsonGenerator out) {
    this.out = out;
  }

  /** The order of work of a job. */
  public static String write(WorkPlan plan) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      new WorkPlanWriter(out).plan(plan);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void plan(WorkPlan plan) throws IOException {
    out.writeStartObject();
    out.writeObjectFieldStart("ruleBase");
    out.writeStringField("version", plan.ruleBase().version());
    out.writeStringField("fingerprint", plan.ruleBase().fingerprint());
    out.writeEndObject();
    if (!plan.reference().isEmpty()) {
      out.writeStringField("reference", plan.reference());
    }
    out.writeStringField("date", plan.date().toString());
    out.writeStringField("ruleSet", plan.ruleSet().id());
    out.writeStringField("scope", id(plan.scope()));
    list("cautions", plan.cautions(), this::caution);
    list("stops", plan.stops(), this::stop);
    list("toState", plan.toState(), this::toState);
    list("steps", plan.steps(), this::step);
    out.writeEndObject();
  }

  private void caution(Caution caution) throws IOException {
    out.writeStringField("id", caution.id());
    out.writeStringField("text", caution.text());
    list("source", caution.source(), this::source);
  }

  private void stop(Stop stop) throws IOException {
    out.writeStringField("wheelEnd", stop.wheelEnd().toString());
    out.writeNumberField("step", stop.step());
    texts("why", stop.why());
  }

  private void toState(ToState fact) throws IOException {
    out.writeStringField("wheelEnd", fact.wheelEnd().toString());
    out.writeStringField("fact", fact.fact());
    numbers("steps", fact.steps());
  }

  private void step(WorkStep step) throws IOException {
    out.writeNumberField("number", step.number());
    out.writeStringField("id", step.id());
    out.writeStringField("phase", id(step.phase()));
    out.writeStringField("level", id(step.level()));
    if (!step.on().isEmpty()) {
      out.writeStringField("on", step.on());
    }
    if (step.ifFitted().isPresent()) {
      out.writeStringField("ifFitted", step.ifFitted().get());
    }
    out.writeStringField("text", step.text());
    out.writeBooleanField("hold", step.hold());
    if (step.hold()) {
      out.writeStringField("passesWhen", step.passesWhen());
    }
    list("parts", step.parts(), this::part);
    texts("undecided", step.undecided().stream().map(Place::toString).toList());
    texts("details", step.details());
    texts("greases", ids(step.greases()));
    texts("keepsDry", ids(step.keepsDry()));
    out.writeStringField("air", id(step.air()));
    texts("cautions", step.cautions().stream().map(Caution::id).toList());
    list("records", step.records(), this::record);
    numbers("after", step.after());
    list("because", step.because(), this::because);
    list("source", step.source(), this::source);
  }

  private void part(FittedPart part) throws IOException {
    out.writeStringField("part", part.part().toString());
    out.writeStringField("use", id(part.use()));
    texts("rules", part.rules());
  }

  private void record(Recording recording) throws IOException {
    out.writeStringField("what", recording.what());
    list("limits", recording.limits(), this::limit);
    out.writeBooleanField("makersFigure", recording.makersFigure());
  }

  private void limit(LimitInForce limit) throws IOException {
    out.writeStringField("id", limit.id());
    out.writeStringField("comparison", limit.comparison().inWords());
    out.writeStringField("value", limit.written());
    out.writeStringField("source", limit.source().citation());
  }

  private void because(Because because) throws IOException {
    if (because.part().isPresent()) {
      out.writeStringField("part", because.part().get().toString());
    }
    out.writeStringField("words", because.words());
    texts("rules", because.rules());
  }

  private void source(Source source) throws IOException {
    out.writeStringField("citation", source.citation());
    out.writeStringField("title", source.title());
    out.writeStringField("standing", id(source.standing()));
  }

  /** Writes the fields of one entry. */
  @FunctionalInterface
  private interface Fields<T> {
    void of(T entry) throws IOException;
  }

  private <T> void list(String name, List<T> entries, Fields<T> fields) throws IOException {
    out.writeArrayFieldStart(name);
    for (T entry : entries) {
      out.writeStartObject();
      fields.of(entry);
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

  private void numbers(String name, List<Integer> numbers) throws IOException {
    out.writeArrayFieldStart(name);
    for (int number : numbers) {
      out.writeNumber(number);
    }
    out.writeEndArray();
  }

  private static List<String> ids(List<? extends Enum<?>> constants) {
    return constants.stream().map(WorkPlanWriter::id).toList();
  }

  private static String id(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
