package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

  @Test
  void folder_without_rule_base_gives_exit_code_4() {
    CommandLineRun run = CommandLineRun.of("lint", folder.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints())
        .singleElement()
        .asString()
        .startsWith(folder + ": the rule base cannot be read");
  }
}
