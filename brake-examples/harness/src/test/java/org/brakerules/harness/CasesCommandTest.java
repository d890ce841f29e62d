package org.brakerules.harness;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.brakerules.trial.RuleBaseFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CasesCommandTest {

  @Test
  void cases_of_one_component_are_run_and_counted() {
    CommandLineRun run = CommandLineRun.of("cases", "camshaft-bushing");

    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains("ok     camshaft-bushing: ")
        .doesNotContain("camshaft-seal: ")
        .containsPattern("\n[1-9][0-9]* cases, 0 not as expected\n");
  }

  @Test
  void unknown_component_is_answered_with_the_nearest_one() {
    CommandLineRun run = CommandLineRun.of("cases", "camshaft-bushin");

    assertThat(run.exitCode()).isEqualTo(2);
    assertThat(run.err())
        .contains("\"camshaft-bushin\" has no cases; did you mean camshaft-bushing?");
  }

  @Test
  void cases_of_a_folder_are_run_against_the_rules_of_that_folder(@TempDir Path folder)
      throws IOException {
    Path rules = rulesIn(folder);
    Path hose = rules.resolve("hose/hose.drl");
    Files.writeString(hose, Files.readString(hose).replace("verdict.replace", "verdict.clean"));

    CommandLineRun run = CommandLineRun.of("cases", "--rules", folder.toString(), "hose");

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out()).contains("FAILED hose: ", "expected hose: replace, got clean, because:");

    CommandLineRun trial = CommandLineRun.of("mutate", "--rules", folder.toString(), "hose");

    assertThat(trial.exitCode()).isEqualTo(3);
    assertThat(trial.err())
        .contains("of the cases did not come out as expected; see brake cases first");
  }

  @Test
  void rules_with_mistakes_are_not_asked(@TempDir Path folder) throws IOException {
    Path rules = rulesIn(folder);
    Path hose = rules.resolve("hose/hose.drl");
    Files.writeString(hose, Files.readString(hose).replace("verdict.replace", "verdict.replase"));

    CommandLineRun run = CommandLineRun.of("cases", "--rules", folder.toString());

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err())
        .matches(
            Pattern.quote(folder + ": the rules have mistakes (")
                + "[0-9]+"
                + Pattern.quote("); see brake lint " + folder + " first\n"));
  }

  @Test
  void folder_without_rules_is_no_rule_base(@TempDir Path folder) {
    CommandLineRun run = CommandLineRun.of("cases", "--rules", folder.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.err())
        .isEqualTo(
            "The rules cannot be read: there is no folder org/brakerules/rules in "
                + folder
                + "\n");
  }

  private static Path rulesIn(Path folder) throws IOException {
    Path rules = folder.resolve("org/brakerules/rules");
    try (RuleBaseFolder own = RuleBaseFolder.ofThisArtifact();
        Stream<Path> files = Files.walk(own.path().resolve("org/brakerules/rules"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(own.path().relativize(file).toString());
        Files.createDirectories(requireNonNull(copy.getParent()));
        Files.copy(file, copy);
      }
    }
    return rules;
  }
}
