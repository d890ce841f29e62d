package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LintRulesCommandTest {

  private static final String RULES = "../../brake-rules/src/main/resources";

  @TempDir private Path folder;

  @Test
  void rule_base_of_this_project_has_no_problems() {
    CommandLineRun run = CommandLineRun.of("lint", RULES);

    assertThat(run.out()).isEqualTo("0 problems\n");
    assertThat(run.exitCode()).isZero();
  }

  @Test
  void broken_rule_gives_exit_code_1_and_a_line_with_file_and_line() throws IOException {
    Path component = Files.createDirectories(folder.resolve("org/brakerules/rules/camshaft"));
    Files.writeString(component.resolve("camshaft.drl"), "package org.brakerules.rules;\nrule \n");

    CommandLineRun run = CommandLineRun.of("lint", folder.toString());

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).containsPattern("camshaft\\.drl:[0-9]+:");
  }

  @ParameterizedTest
  @CsvSource({"1, 1 problem", "2, 2 problems"})
  void problems_are_counted_in_words(int bad, String words) {
    assertThat(Counted.of(bad, "problem")).isEqualTo(words);
  }

  @Test
  void folder_without_rule_base_gives_exit_code_4_and_says_what_to_name() {
    CommandLineRun run = CommandLineRun.of("lint", folder.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints())
        .containsExactly(
            folder
                + ": the rule base cannot be read: it holds no org/brakerules/rules; name the"
                + " folder that holds org/brakerules/rules, such as src/main/resources");
  }

  @Test
  void folder_that_is_not_there_is_told_in_a_sentence() {
    CommandLineRun run = CommandLineRun.of("lint", "nowhere");

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints())
        .containsExactly(
            "nowhere: the rule base cannot be read: there is no such folder; name the folder that"
                + " holds org/brakerules/rules, such as src/main/resources");
  }

  @Test
  void problems_can_be_written_as_sarif() throws IOException {
    Path component = Files.createDirectories(folder.resolve("org/brakerules/rules/camshaft"));
    Files.writeString(component.resolve("camshaft.drl"), "package org.brakerules.rules;\nrule \n");

    CommandLineRun run = CommandLineRun.of("lint", "--format", "sarif", folder.toString());

    assertThat(run.exitCode()).isEqualTo(1);
    JsonNode log = new ObjectMapper().readTree(run.out());
    assertThat(log.path("version").textValue()).isEqualTo("2.1.0");
    assertThat(log.path("runs").get(0).path("results")).isNotEmpty();
  }
}
