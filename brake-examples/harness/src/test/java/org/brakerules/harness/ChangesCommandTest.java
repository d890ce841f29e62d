package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangesCommandTest {

  private static final String RULES = "../../brake-rules/src/main/resources";

  @TempDir private Path docs;

  @Test
  void this_rule_base_differs_in_nothing_the_changelog_leaves_unsaid() {
    CommandLineRun run = CommandLineRun.of("changes", RULES, "--docs", "../../docs");

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).containsPattern("differs? from [0-9]");
    assertThat(run.exitCode()).isZero();
  }

  @Test
  void a_release_is_put_on_record_once() throws IOException {
    CommandLineRun first = record("0.1.0");
    CommandLineRun second = record("0.1.0");

    Path file = docs.resolve("releases/0.1.0.csv");
    assertThat(first.out()).isEqualTo("0.1.0 is on record: " + file + "\n");
    assertThat(first.exitCode()).isZero();
    assertThat(Files.readString(file))
        .contains("rule,DRUM-010,drum,then verdict.replace( $part )\n");
    assertThat(second.complaints())
        .containsExactly(
            "brake changes: a file cannot be read or written: "
                + file
                + ": it is on record; a release does not change afterwards");
    assertThat(second.exitCode()).isEqualTo(4);
  }

  @Test
  void what_the_changelog_leaves_unsaid_gives_exit_code_1() throws IOException {
    record("0.1.0");
    Path file = docs.resolve("releases/0.1.0.csv");
    Files.writeString(
        file,
        Files.readString(file)
            .replace(
                "rule,DRUM-010,drum,then verdict.replace", "rule,DRUM-010,drum,then verdict.hold"));
    Files.writeString(docs.resolve("CHANGELOG.md"), "## 0.1.0\n");

    CommandLineRun run = CommandLineRun.of("changes", RULES, "--docs", docs.toString());

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out())
        .isEqualTo(
            """
            1 differ from 0.1.0:
            DRUM-010 (rule, changed)
              - then verdict.hold( $part )
              + then verdict.replace( $part )
            """);
    assertThat(run.complaints())
        .singleElement()
        .asString()
        .contains("CHANGELOG.md:1: `DRUM-010` (rule, changed) is not named;");
  }

  @Test
  void a_rule_base_with_mistakes_is_sent_to_the_linter() throws IOException {
    Path component = Files.createDirectories(docs.resolve("org/brakerules/rules/camshaft"));
    Files.writeString(component.resolve("camshaft.drl"), "package org.brakerules.rules;\nrule \n");

    CommandLineRun run = CommandLineRun.of("changes", docs.toString());

    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.complaints())
        .singleElement()
        .asString()
        .matches("brake changes: the rule base has mistakes \\([0-9]+\\); see brake lint first");
  }

  @Test
  void docs_without_a_changelog_give_exit_code_4() {
    CommandLineRun run = CommandLineRun.of("changes", RULES, "--docs", docs.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.err()).contains("CHANGELOG.md");
  }

  private CommandLineRun record(String version) {
    return CommandLineRun.of("changes", RULES, "--docs", docs.toString(), "--record", version);
  }
}
