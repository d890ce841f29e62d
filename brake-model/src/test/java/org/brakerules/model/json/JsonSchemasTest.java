package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.stream.Stream;
import org.brakerules.model.decision.JobDecision;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The shipped schemas are made from the records and agree with reader and writer.
 *
 * <p>After a change of the records: {@code mvn test -pl brake-model -Dtest=JsonSchemasTest
 * -Dregenerate=true}.
 */
class JsonSchemasTest {

  @BeforeAll
  static void writeTheSchemasWhenAskedTo() {
    if (Boolean.getBoolean("regenerate")) {
      SchemaFiles.write("job.schema.json", SchemaFiles.job());
      SchemaFiles.write("decision.schema.json", SchemaFiles.decision());
    }
  }

  @Test
  void the_shipped_schemas_are_those_of_the_records() {
    assertThat(JsonSchemas.job()).isEqualTo(SchemaFiles.job());
    assertThat(JsonSchemas.decision()).isEqualTo(SchemaFiles.decision());
  }

  static Stream<String> jobs() {
    return Stream.concat(
        Stream.of(SampleJobs.full(), SampleJobs.smallest(), SampleJobs.combination()),
        Stream.generate(new RandomJobs(2)::next).limit(60).map(JobWriter::write));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void a_job_the_reader_accepts_is_accepted_by_the_schema(String job) {
    JobReader.read(job);

    assertThat(SchemaFiles.errors(JsonSchemas.job(), job)).isEmpty();
  }

  static Stream<JobDecision> decisions() {
    return Stream.of(SampleDecision.full(), SampleDecision.empty());
  }

  @ParameterizedTest
  @MethodSource("decisions")
  void a_written_decision_is_accepted_by_the_schema(JobDecision decision) {
    String written = DecisionWriter.write(decision);

    assertThat(SchemaFiles.errors(JsonSchemas.decision(), written)).isEmpty();
  }

  static Stream<ObjectNode> schemasWithExamples() {
    return Stream.of(JsonSchemas.job(), JsonSchemas.decision())
        .map(SchemaFiles::tree)
        .flatMap(
            root ->
                root.findParents("examples").stream()
                    .map(
                        schema ->
                            ((ObjectNode) schema.deepCopy()).set("$defs", root.get("$defs"))));
  }

  @ParameterizedTest
  @MethodSource("schemasWithExamples")
  void every_example_in_a_schema_is_accepted_by_it(ObjectNode schema) {
    for (JsonNode example : schema.get("examples")) {
      assertThat(SchemaFiles.errors(schema.toString(), example.toString())).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "scope": "camshaft-out"        | "scope": "all"
          "scope": "camshaft-out"        | "scop": "camshaft-out"
          "date": "2026-11-20"           | "date": "20 Nov 2026"
          "date": "2026-11-20"           | "date": null
          "ruleSet": "us-federal"        | "ruleSet": "US Federal"
          "reference": "H-4417"          | "reference": " "
          "value": "0.012 in"            | "value": "0.012"
          "value": "0.012 in"            | "value": 0.012
          "value": "0.012 in"            | "value": "0,012 in"
          "value": "0.012 in"            | "value": "-0.012 in"
          "value": "0.012 in"            | "value": "12 psi"
          "method": "dial-indicator",    | "method": "dial",
          "axle": 2                      | "axle": 0
          "axle": 2                      | "axle": 100
          "axle": 2                      | "axle": "2"
          "part": "camshaft",            | "part": "crankshaft",
          "station": "head-end"          | "station": "tube"
          "station": "head-end",         | ``
          "crack": "not-seen"            | "crack": false
          "crack": "not-seen"            | "cracked": "not-seen"
          "crack": "not-seen"            | "station": "tube"
          "number": 2                    | "number": 21
          "document": "Axle manual",     | ``
          """)
  void a_bad_job_is_refused_by_schema_and_reader(String written, String replacement) {
    String job = SampleJobs.full().replace(written, replacement);

    assertThat(job).isNotEqualTo(SampleJobs.full());
    assertThat(SchemaFiles.errors(JsonSchemas.job(), job)).isNotEmpty();
    assertThatThrownBy(() -> JobReader.read(job)).isInstanceOf(InvalidJobException.class);
  }

  @Test
  void a_decision_with_a_field_more_is_refused_by_the_schema() {
    String decision = DecisionWriter.write(SampleDecision.full()).replace("\"hold\"", "\"held\"");

    assertThat(SchemaFiles.errors(JsonSchemas.decision(), decision)).isNotEmpty();
  }
}
