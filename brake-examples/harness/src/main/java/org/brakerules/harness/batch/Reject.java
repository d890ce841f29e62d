package org.brakerules.harness.batch;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;

/**
 * A line that has no decision, and why.
 *
 * @param line the line
 * @param kind what kind of reason it is
 * @param problems every problem, each with what to write instead
 */
record Reject(Line line, Kind kind, List<String> problems) {

  /** How much is kept of a line that is longer than any job. */
  private static final int BEGINNING = 1_000;

  /** Why a line has no decision. */
  enum Kind {
    /** There is nothing in it. */
    BLANK,
    /** It is no JSON, or no job. */
    INVALID,
    /** It is a job, but the rule base does not know something in it. */
    REFUSED,
    /** A mistake in this program. */
    FAILURE
  }

  /** The reject as one line of JSON with its line feed. */
  byte[] asJson() {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("line", line.number()).put("kind", Names.of(kind));
    problems.forEach(json.putArray("problems")::add);
    if (line.isCut()) {
      json.put("beginning", new String(line.bytes(), 0, BEGINNING, StandardCharsets.UTF_8));
      json.put("length", line.length());
    } else {
      text(json);
    }
    return (json + "\n").getBytes(StandardCharsets.UTF_8);
  }

  /** A line that is no text is kept as its bytes, so that nothing of it is lost. */
  private void text(ObjectNode json) {
    byte[] bytes = withoutReturn();
    try {
      json.put(
          "text", StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException noText) {
      json.put("base64", Base64.getEncoder().encodeToString(bytes));
    }
  }

  private byte[] withoutReturn() {
    byte[] bytes = line.bytes();
    boolean returns = bytes.length > 0 && bytes[bytes.length - 1] == '\r';
    return returns ? Arrays.copyOf(bytes, bytes.length - 1) : bytes;
  }
}
