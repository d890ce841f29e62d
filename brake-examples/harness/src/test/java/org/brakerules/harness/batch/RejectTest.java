package org.brakerules.harness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import org.brakerules.BrakeRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A line that has no decision is kept, with its number and why, and the others go on. */
class RejectTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final byte[] GOOD = (Jobs.job(1) + "\n").getBytes(StandardCharsets.UTF_8);

  private final ByteArrayOutputStream decided = new ByteArrayOutputStream();
  private final ByteArrayOutputStream rejected = new ByteArrayOutputStream();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          `` | blank | found an empty line
          `   ` | blank | found an empty line
          no job | invalid | column 1: found no, expected a brake job
          [] | invalid | column 1: found
          {} | invalid | column 1: found no
          {"date":"2026-11-20" | invalid | column 21, /date: found the end
          `{"date":"2026-11-20"} {"date":"2026-11-20"}` | invalid | column 23
          """)
  void a_bad_line_is_told_with_its_number_kind_and_place(String line, String kind, String why)
      throws IOException {
    run((line + "\n").getBytes(StandardCharsets.UTF_8));

    JsonNode reject = onlyReject();
    assertThat(reject.path("line").asInt()).isEqualTo(2);
    assertThat(reject.path("kind").asText()).isEqualTo(kind);
    assertThat(reject.path("problems").toString()).contains(why);
    assertThat(reject.path("text").asText()).isEqualTo(line);
    assertThat(reject.size()).isEqualTo(4);
  }

  @Test
  void a_job_the_rule_base_refuses_is_told_apart_from_one_that_is_none() throws IOException {
    run((Jobs.job(2).replace("us-federal", "atlantis") + "\n").getBytes(StandardCharsets.UTF_8));

    assertThat(onlyReject().path("kind").asText()).isEqualTo("refused");
    assertThat(onlyReject().path("problems").get(0).asText()).contains("atlantis");
  }

  @Test
  void a_line_that_is_no_text_is_kept_byte_for_byte() throws IOException {
    byte[] line = {'{', (byte) 0xff, (byte) 0xfe, '}'};

    run(joined(line, new byte[] {'\n'}));

    assertThat(Base64.getDecoder().decode(onlyReject().path("base64").asText())).isEqualTo(line);
    assertThat(onlyReject().path("problems").get(0).asText()).contains("the byte FF");
  }

  @Test
  void of_a_line_longer_than_any_job_its_beginning_and_length_are_kept() throws IOException {
    run(("x".repeat(6_000_000) + "\n").getBytes(StandardCharsets.UTF_8));

    assertThat(onlyReject().path("beginning").asText()).isEqualTo("x".repeat(1000));
    assertThat(onlyReject().path("length").asLong()).isEqualTo(6_000_000);
    assertThat(onlyReject().path("problems").get(0).asText()).contains("more than 5 MB");
  }

  @Test
  void a_carriage_return_before_the_line_feed_is_no_part_of_the_line() throws IOException {
    run("no job\r\n".getBytes(StandardCharsets.UTF_8));

    assertThat(onlyReject().path("text").asText()).isEqualTo("no job");
  }

  /** The line stands between two good ones, which have their decisions. */
  private void run(byte[] line) throws IOException {
    byte[] input = joined(GOOD, line, GOOD);
    LineChunks chunks = new LineChunks(new Input("-", new ByteArrayInputStream(input)));
    Form form = CompactForm.of(BrakeRules.standard());
    StreamOutput output = new StreamOutput(decided, rejected);
    Batch.run(chunks, form, Packing.NONE, output, Progress.unseen(), 2);
    List<String> lines = decided.toString(StandardCharsets.UTF_8).lines().toList();
    assertThat(lines).hasSize(2);
    assertThat(lines.get(0)).startsWith("{\"line\":1,");
    assertThat(lines.get(1)).startsWith("{\"line\":3,");
  }

  private JsonNode onlyReject() throws IOException {
    List<String> lines = rejected.toString(StandardCharsets.UTF_8).lines().toList();
    assertThat(lines).hasSize(1);
    return MAPPER.readTree(lines.get(0));
  }

  private static byte[] joined(byte[]... pieces) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    List.of(pieces).forEach(all::writeBytes);
    return all.toByteArray();
  }
}
