package org.brakerules.model.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** Writes readings, with what is not stated left out. */
final class ReadingWriter {

  private ReadingWriter() {}

  /**
   * Writes what was measured: one reading as it is, several in an array.
   *
   * @param own the station of a reading that states none
   */
  static <Q extends Quantity<Q>> void write(
      Measurement<Q> measurement, Station own, JsonGenerator out) throws IOException {
    List<Reading<Q>> readings = measurement.readings();
    if (readings.size() == 1) {
      write(readings.get(0), own, out);
      return;
    }
    out.writeStartArray();
    for (Reading<Q> reading : readings) {
      write(reading, own, out);
    }
    out.writeEndArray();
  }

  /** Writes one reading. */
  static void write(Reading<?> reading, Station own, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField("value", reading.written());
    if (reading.station() != own) {
      out.writeStringField("at", Names.of(reading.station()));
    }
    if (reading.method() != Method.UNKNOWN) {
      out.writeStringField("method", Names.of(reading.method()));
    }
    if (reading.uncertainty().isPresent()) {
      out.writeStringField("uncertainty", reading.uncertainty().get().toString());
    }
    if (reading.reservoirPressure().isPresent()) {
      out.writeStringField("reservoirPressure", reading.reservoirPressure().get().toString());
    }
    if (reading.moment() != Moment.UNKNOWN) {
      out.writeStringField("moment", Names.of(reading.moment()));
    }
    out.writeEndObject();
  }
}
