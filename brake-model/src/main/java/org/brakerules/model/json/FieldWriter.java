package org.brakerules.model.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** Writes the fields of objects. */
record FieldWriter(JsonGenerator out) {

  /** Writes the fields of one object. */
  interface Body<T> {
    void write(T value) throws IOException;
  }

  void text(String name, Object value) throws IOException {
    out.writeStringField(name, value.toString());
  }

  void textUnlessEmpty(String name, String text) throws IOException {
    if (!text.isEmpty()) {
      out.writeStringField(name, text);
    }
  }

  <E extends Enum<E>> void choice(String name, E constant) throws IOException {
    out.writeStringField(name, Names.of(constant));
  }

  <E extends Enum<E>> void choiceUnless(E unstated, String name, E constant) throws IOException {
    if (constant != unstated) {
      choice(name, constant);
    }
  }

  void texts(String name, List<?> values) throws IOException {
    out.writeArrayFieldStart(name);
    for (Object value : values) {
      out.writeString(value.toString());
    }
    out.writeEndArray();
  }

  <T> void object(String name, T value, Body<T> body) throws IOException {
    out.writeFieldName(name);
    object(value, body);
  }

  <T> void object(T value, Body<T> body) throws IOException {
    out.writeStartObject();
    body.write(value);
    out.writeEndObject();
  }

  <T> void objects(String name, List<T> values, Body<T> body) throws IOException {
    out.writeArrayFieldStart(name);
    for (T value : values) {
      object(value, body);
    }
    out.writeEndArray();
  }

  <T> void objectsUnlessEmpty(String name, List<T> values, Body<T> body) throws IOException {
    if (!values.isEmpty()) {
      objects(name, values, body);
    }
  }
}
