package org.brakerules.harness;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.trial.RuleBaseFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

  @ParameterizedTest
  @ValueSource(strings = {"cases", "mutate", "coverage"})
  void mistakes_in_any_file_are_told_as_lint_tells_them_and_nothing_is_tried(
      String command, @TempDir Path folder) throws IOException {
    Path rules = rulesIn(folder);
    Path hose = rules.resolve("hose/hose.drl");
    Files.writeString(hose, Files.readString(hose).replaceFirst("verdict.replace", "verdict.fit"));
    Files.writeString(rules.resolve("drum/drum.cases.yaml"), "- case: Crack\n\tfires: DRUM-010\n");
    Files.writeString(rules.resolve("coverage-open.csv"), "");

    CommandLineRun run = CommandLineRun.of(command, "--rules", folder.toString(), "shoe");

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    List<String> lint = CommandLineRun.of("lint", folder.toString()).out().lines().toList();
    assertThat(lint).hasSize(4).last().isEqualTo("3 problems");
    assertThat(run.complaints())
        .containsExactlyElementsOf(
            Stream.concat(
                    lint.stream().limit(3), Stream.of(folder + ": 3 problems; mend them first"))
                .toList());
    assertThat(lint)
        .startsWith(
            "org/brakerules/rules/coverage-open.csv:1:1: [table-form] the table is empty -> begin"
                + " it with \"what,id,reason\"",
            "org/brakerules/rules/drum/drum.cases.yaml:2:1: [case-form] a tab, where only blanks"
                + " may indent a line -> write two blanks instead of it");
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
