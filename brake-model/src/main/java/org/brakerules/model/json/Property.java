package org.brakerules.model.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/**
 * One component of a part or layout record: a field of the same name that may be left out.
 *
 * @param <T> the type of the component
 */
sealed interface Property<T> {

  /** The name of the component and of the field. */
  String name();

  /** The value that means nothing is stated. */
  T unstated();

  /**
   * Reads the value.
   *
   * @param own the station of the part it belongs to
   * @return the value; the unstated one if there is a problem
   */
  T read(Node node, Values values, Station own);

  /** Writes a value that is stated. */
  void write(T value, Station own, JsonGenerator out) throws IOException;

  /** A sign or an attribute: one of the constants of an enum. */
  record Choice<E extends Enum<E>>(String name, Names<E> names, E unstated) implements Property<E> {

    @Override
    public E read(Node node, Values values, Station own) {
      return values.choice(node, names).orElse(unstated);
    }

    @Override
    public void write(E value, Station own, JsonGenerator out) throws IOException {
      out.writeString(Names.of(value));
    }
  }

  /** A measurement: its readings, none larger than any brake has. */
  record Measured<Q extends Quantity<Q>>(String name, Class<Q> type, Optional<Q> atMost)
      implements Property<Measurement<Q>> {

    @Override
    public Measurement<Q> unstated() {
      return Measurement.notTaken();
    }

    @Override
    public Measurement<Q> read(Node node, Values values, Station own) {
      return new ReadingReader<>(this, own, values).measurement(node);
    }

    @Override
    public void write(Measurement<Q> value, Station own, JsonGenerator out) throws IOException {
      ReadingWriter.write(value, own, out);
    }
  }

  /** A quantity that is stated, not measured, such as a rated stroke. */
  record Amount<Q extends Quantity<Q>>(String name, Class<Q> type, Optional<Q> atMost)
      implements Property<Optional<Q>> {

    @Override
    public Optional<Q> unstated() {
      return Optional.empty();
    }

    @Override
    public Optional<Q> read(Node node, Values values, Station own) {
      return values.quantity(node, type, atMost);
    }

    @Override
    public void write(Optional<Q> value, Station own, JsonGenerator out) throws IOException {
      out.writeString(value.orElseThrow().toString());
    }
  }

  /** A text as marked on the part. */
  record Marking(String name) implements Property<String> {

    @Override
    public String unstated() {
      return "";
    }

    @Override
    public String read(Node node, Values values, Station own) {
      return values.text(node).orElse(unstated());
    }

    @Override
    public void write(String value, Station own, JsonGenerator out) throws IOException {
      out.writeString(value);
    }
  }

  /** A record of its own, such as the size of the chamber. */
  record Nested<R extends Record>(String name, RecordShape<R> shape) implements Property<R> {

    @Override
    public R unstated() {
      return shape.unstated();
    }

    @Override
    public R read(Node node, Values values, Station own) {
      return shape.readAlone(node, values).orElseGet(this::unstated);
    }

    @Override
    public void write(R value, Station own, JsonGenerator out) throws IOException {
      out.writeStartObject();
      shape.writeFields(value, own, out);
      out.writeEndObject();
    }
  }
}
