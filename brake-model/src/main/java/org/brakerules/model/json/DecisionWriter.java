package org.brakerules.model.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import org.brakerules.model.decision.JobDecision;

/**
 * Writes decisions as JSON. The same decision gives the same text, to the byte.
 *
 * <p>Lists are always there; a single value that is not stated is left out.
 */
public final class DecisionWriter {

  private DecisionWriter() {}

  /** Writes over several lines, each ended by a line feed. */
  public static String write(JobDecision decision) {
    StringWriter text = new StringWriter();
    write(decision, text);
    return text.toString();
  }

  /** Writes on one line without blanks and without a line feed at the end. */
  public static String writeCompact(JobDecision decision) {
    StringWriter text = new StringWriter();
    writeCompact(decision, text);
    return text.toString();
  }

  /**
   * Writes as {@link #write(JobDecision)}; the writer is left open.
   *
   * @throws UncheckedIOException if it cannot be written
   */
  public static void write(JobDecision decision, Writer out) {
    try (JsonGenerator json = StrictJson.prettyGenerator(out)) {
      new DecisionJson(json).decision(decision);
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Writes as {@link #writeCompact(JobDecision)}; the writer is left open.
   *
   * @throws UncheckedIOException if it cannot be written
   */
  public static void writeCompact(JobDecision decision, Writer out) {
    try (JsonGenerator json = StrictJson.compactGenerator(out)) {
      new DecisionJson(json).decision(decision);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Writes as {@link #write(JobDecision)}, in UTF-8; the stream is left open.
   *
   * @throws UncheckedIOException if it cannot be written
   */
  public static void write(JobDecision decision, OutputStream out) {
    write(decision, new OutputStreamWriter(out, StandardCharsets.UTF_8));
  }

  /**
   * Writes as {@link #writeCompact(JobDecision)}, in UTF-8; the stream is left open.
   *
   * @throws UncheckedIOException if it cannot be written
   */
  public static void writeCompact(JobDecision decision, OutputStream out) {
    writeCompact(decision, new OutputStreamWriter(out, StandardCharsets.UTF_8));
  }
}
