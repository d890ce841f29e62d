package org.brakerules.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.brakerules.finalcheck.FinalCheckWriter;
import org.brakerules.model.json.DecisionWriter;
import org.brakerules.model.json.JobWriter;

/** Writes the record of a job as one JSON document, on one line. */
public final class JobRecordWriter {

  private static final JsonFactory FACTORY = new JsonFactory();

  private JobRecordWriter() {}

  /** The record of one job. The same job and rule base give the same text, to the byte. */
  public static String write(JobRecord record) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      out.writeStartObject();
      out.writeFieldName("job");
      out.writeRawValue(JobWriter.write(record.job()).strip());
      out.writeFieldName("decision");
      out.writeRawValue(DecisionWriter.writeCompact(record.decision()));
      if (record.finalCheck().isPresent()) {
        out.writeFieldName("finalCheck");
        out.writeRawValue(FinalCheckWriter.write(record.finalCheck().get()));
      }
      retention(record, out);
      out.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static void retention(JobRecord record, JsonGenerator out) throws IOException {
    out.writeArrayFieldStart("keep");
    for (Retention one : record.retention()) {
      out.writeStartObject();
      out.writeStringField("id", one.id());
      out.writeStringField("what", one.what());
      out.writeStringField("keep", one.keep());
      out.writeObjectFieldStart("source");
      out.writeStringField("id", one.source().id());
      out.writeStringField("title", one.source().title());
      out.writeStringField(
          "standing", one.source().standing().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      out.writeEndObject();
      out.writeEndObject();
    }
    out.writeEndArray();
  }
}
