package org.brakerules.internal.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.job.RuleSet;

/**
 * An answer to a job as JSON, field by field, on one line. Enum constants are written in lower case
 * with hyphens.
 */
public final class AnswerJson {

  private static final JsonFactory FACTORY = new JsonFactory();

  /** A step that writes to memory, and so never fails for want of space or permission. */
  private interface Write {
    void run() throws IOException;
  }

  private final JsonGenerator out;

  private AnswerJson(JsonGenerator out) {
    this.out = out;
  }

  /** A document that is one object. */
  public static String document(Consumer<AnswerJson> fields) {
    StringWriter text = new StringWriter();
    write(
        () -> {
          try (JsonGenerator out = FACTORY.createGenerator(text)) {
            out.writeStartObject();
            fields.accept(new AnswerJson(out));
            out.writeEndObject();
          }
        });
    return text.toString();
  }

  /** The name of a constant. */
  public static String id(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Which rule base answered which job. */
  public void header(RuleBaseVersion ruleBase, String reference, LocalDate date, RuleSet ruleSet) {
    object(
        "ruleBase",
        () -> {
          text("version", ruleBase.version());
          text("fingerprint", ruleBase.fingerprint());
        });
    unlessEmpty("reference", reference);
    text("date", date.toString());
    text("ruleSet", ruleSet.id());
  }

  /** A text. */
  public void text(String name, String text) {
    write(() -> out.writeStringField(name, text));
  }

  /** A constant. */
  public void text(String name, Enum<?> constant) {
    text(name, id(constant));
  }

  /** A text that is left out where there is none. */
  public void unlessEmpty(String name, String text) {
    if (!text.isEmpty()) {
      text(name, text);
    }
  }

  /** True or false. */
  public void flag(String name, boolean value) {
    write(() -> out.writeBooleanField(name, value));
  }

  /** A number that counts something. */
  public void number(String name, int value) {
    write(() -> out.writeNumberField(name, value));
  }

  /** Texts in an array. */
  public void texts(String name, List<?> values) {
    array(name, values, value -> write(() -> out.writeString(value.toString())));
  }

  /** Numbers in an array. */
  public void numbers(String name, List<Integer> values) {
    array(name, values, value -> write(() -> out.writeNumber(value)));
  }

  /** Objects in an array. */
  public <T> void objects(String name, List<T> values, Consumer<T> fields) {
    array(
        name,
        values,
        value ->
            write(
                () -> {
                  out.writeStartObject();
                  fields.accept(value);
                  out.writeEndObject();
                }));
  }

  /** An object in a field. */
  public void object(String name, Runnable fields) {
    write(
        () -> {
          out.writeObjectFieldStart(name);
          fields.run();
          out.writeEndObject();
        });
  }

  /** A document that was written already. */
  public void document(String name, String json) {
    write(
        () -> {
          out.writeFieldName(name);
          out.writeRawValue(json.strip());
        });
  }

  private <T> void array(String name, List<T> values, Consumer<T> entry) {
    write(
        () -> {
          out.writeArrayFieldStart(name);
          values.forEach(entry);
          out.writeEndArray();
        });
  }

  private static void write(Write step) {
    try {
      step.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
