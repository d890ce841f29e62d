package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoverageCommandTest {

  @TempDir private Path folder;

  @Test
  void cases_leave_nothing_open_and_the_report_is_written_whole_to_a_file() throws IOException {
    Path file = Files.writeString(folder.resolve("coverage.json"), "an older one");

    CommandLineRun run =
        CommandLineRun.of("coverage", "--format", "json", "--output", file.toString());

    JsonNode json = new ObjectMapper().readTree(Files.readString(file));
    assertThat(run.out()).isEmpty();
    assertThat(json.path("open")).isEmpty();
    assertThat(run.exitCode()).isZero();
    assertThat(json.path("components")).extracting(JsonNode::asText).contains("hose", "cause");
    assertThat(json.path("cases").asInt()).isGreaterThan(1000);
    assertThat(json.path("madeJobs").asInt()).isGreaterThan(500);
    assertThat(json.path("rules").findValuesAsText("id")).contains("HOSE-010", "HOSE-020");
    assertThat(json.at("/rules/0/fires")).isNotEmpty();
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(file);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"taken", "nowhere/coverage.txt"})
  void file_that_cannot_be_written_is_told_before_anything_is_run(String name) throws IOException {
    Files.createDirectories(folder.resolve("taken"));
    Path file = folder.resolve(name);

    CommandLineRun run = CommandLineRun.of("coverage", "hose", "--output", file.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.out()).isEmpty();
    assertThat(run.complaints())
        .containsExactly(file + ": the report cannot be written there; name another file");
  }

  @Test
  void unknown_component_is_answered_with_the_nearest_one() {
    CommandLineRun run = CommandLineRun.of("coverage", "hoose");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err()).contains("\"hoose\" is no component; did you mean hose?");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pdf  | write one of text, json, html
          jsno | did you mean json?
          """)
  void unknown_format_is_answered_with_the_words_as_they_are_typed(String format, String hint) {
    CommandLineRun run = CommandLineRun.of("coverage", "--format", format);

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.complaints())
        .containsExactly(
            "brake coverage: \"%s\" is no word for --format; %s (see brake coverage --help)"
                .formatted(format, hint));
  }

  @Test
  void unknown_colour_is_answered_with_the_words_as_they_are_typed() {
    CommandLineRun run = CommandLineRun.of("decide", "--color", "blue", "job.json");

    assertThat(run.complaints())
        .containsExactly(
            "brake decide: \"blue\" is no word for --color; write one of auto, always, never (see"
                + " brake decide --help)");
  }
}
