package org.brakerules.harness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.brakerules.BrakeRules;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.decision.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a batch writes is what its schemas say. */
class BatchSchemaTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private final ByteArrayOutputStream decided = new ByteArrayOutputStream();
  private final ByteArrayOutputStream rejected = new ByteArrayOutputStream();

  @Test
  void every_line_of_the_demo_batch_and_its_summary_are_accepted() throws IOException {
    Outcome outcome = run(Files.readAllBytes(DemoBatch.FILE));

    assertThat(lines(decided)).hasSize(12).allSatisfy(line -> accepts("batch-line", line));
    assertThat(lines(rejected)).hasSize(1).allSatisfy(line -> accepts("batch-reject", line));
    accepts("batch-summary", outcome.json());
  }

  @Test
  void rejects_of_every_kind_are_accepted() throws IOException {
    String large = "x".repeat(LineChunks.MOST_KEPT + 1);
    ByteArrayOutputStream input = new ByteArrayOutputStream();
    input.writeBytes(("\nno job\n" + large + "\n").getBytes(StandardCharsets.UTF_8));
    input.writeBytes(new byte[] {(byte) 0xff, '\n'});
    input.writeBytes(
        Jobs.job(5).replace("us-federal", "atlantis").getBytes(StandardCharsets.UTF_8));

    run(input.toByteArray());

    assertThat(lines(rejected)).hasSize(5).allSatisfy(line -> accepts("batch-reject", line));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "line":1, | "line":0,
          "line":1, | ``
          "date":"2026-11-20" | "date":"20 Nov 2026"
          "disposition":"undecided" | "disposition":"perhaps"
          "road":"silent" | "rode":"silent"
          "kind":"measured" | "kind":"guessed"
          "part":"axle2/left/camshaft" | "part":"axle2/camshaft"
          """)
  void a_line_with_something_else_in_it_is_refused(String written, String instead)
      throws IOException {
    run(Files.readAllBytes(DemoBatch.FILE));
    String line = lines(decided).get(1);

    assertThat(line).contains(written);
    assertThat(errors("batch-line", line.replace(written, instead))).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({"disposition", "verdict", "road", "status", "standing", "comparison"})
  void words_of_the_schema_are_those_of_the_model(String definition) throws IOException {
    Enum<?>[] constants =
        switch (definition) {
          case "disposition" -> Disposition.values();
          case "verdict" -> Verdict.values();
          case "road" -> RoadAnswer.values();
          case "status" -> CheckStatus.values();
          case "standing" -> Standing.values();
          default -> Comparison.values();
        };
    JsonNode words = MAPPER.readTree(schema("batch-line")).path("$defs").path(definition);

    assertThat(words.path("enum"))
        .extracting(JsonNode::asText)
        .containsExactlyElementsOf(Arrays.stream(constants).map(one -> name(one)).toList());
  }

  private static String name(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Outcome run(byte[] input) throws IOException {
    BrakeRules rules = BrakeRules.standard();
    return new StreamBatch(rules, CompactForm.of(rules), 2)
        .run(
            new NamedInput("-", new ByteArrayInputStream(input)),
            decided,
            rejected,
            Progress.unseen());
  }

  private static List<String> lines(ByteArrayOutputStream out) {
    return out.toString(StandardCharsets.UTF_8).lines().toList();
  }

  private static void accepts(String schema, String document) throws IOException {
    assertThat(errors(schema, document)).isEmpty();
  }

  private static List<Error> errors(String schema, String document) throws IOException {
    return REGISTRY
        .getSchema(schema(schema), InputFormat.JSON)
        .validate(
            document,
            InputFormat.JSON,
            context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)));
  }

  private static String schema(String name) throws IOException {
    try (InputStream in = Batch.class.getResourceAsStream(name + ".schema.json")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
