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
    changelog("## 0.1.0 (2026-11-25)\n");
    CommandLineRun first = record("0.1.0");
    Path file = docs.resolve("releases/0.1.0.csv");
    Files.writeString(file, Files.readString(file) + "rule,OLD-010,drum,then\n");
    CommandLineRun second = record("0.1.0");

    assertThat(first.out()).isEqualTo("0.1.0 is on record: " + file + "\n");
    assertThat(first.exitCode()).isZero();
    assertThat(Files.readString(file))
        .contains("rule,DRUM-010,drum,then verdict.replace( $part )\n")
        .endsWith("rule,OLD-010,drum,then\n");
    assertThat(second.complaints())
        .containsExactly(
            "brake changes: 0.1.0 is on record: "
                + file
                + "; a release does not change afterwards, so record a newer one (see brake changes"
                + " --help)");
    assertThat(second.exitCode()).isEqualTo(2);
  }

  @Test
  void what_the_changelog_does_not_say_of_a_release_keeps_it_off_the_record() throws IOException {
    changelog("## Unreleased\n");

    CommandLineRun run = record("0.1.0");

    assertThat(run.complaints())
        .containsExactly(
            docs.resolve("CHANGELOG.md")
                + ":1: the newest section is \"Unreleased\", not 0.1.0; write \"## 0.1.0"
                + " (YYYY-MM-DD)\", with the day of the release",
            "brake changes: 0.1.0 is not put on record");
    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(docs.resolve("releases")).doesNotExist();
  }

  @Test
  void a_record_that_cannot_be_written_leaves_nothing_behind() throws IOException {
    changelog("## 0.1.0 (2026-11-25)\n");
    Path taken = Files.writeString(docs.resolve("releases"), "a file");

    CommandLineRun run = record("0.1.0");

    assertThat(run.complaints())
        .containsExactly("brake changes: " + taken + " cannot be read or written");
    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(taken).hasContent("a file");
  }

  @Test
  void what_the_changelog_leaves_unsaid_gives_exit_code_1() throws IOException {
    changelog("## 0.1.0 (2026-11-25)\n");
    record("0.1.0");
    Path file = docs.resolve("releases/0.1.0.csv");
    Files.writeString(
        file,
        Files.readString(file)
            .replace(
                "rule,DRUM-010,drum,then verdict.replace", "rule,DRUM-010,drum,then verdict.hold"));

    CommandLineRun run = CommandLineRun.of("changes", RULES, "--docs", docs.toString());

    assertThat(run.exitCode()).isEqualTo(1);
    assertThat(run.out())
        .isEqualTo(
            """
            1 differs from 0.1.0:
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
  void docs_without_a_changelog_are_named_with_the_option() {
    CommandLineRun run = CommandLineRun.of("changes", RULES, "--docs", docs.toString());

    assertThat(run.exitCode()).isEqualTo(4);
    assertThat(run.complaints())
        .containsExactly(
            "brake changes: "
                + docs.resolve("CHANGELOG.md")
                + " is not there; name the folder that holds CHANGELOG.md and releases with --docs");
  }

  @Test
  void without_a_folder_of_rules_the_place_that_was_looked_at_is_named() {
    assertThat(CommandLineRun.of("changes").complaints())
        .containsExactly(
            "brake changes: there is no folder org/brakerules/rules in"
                + " brake-rules/src/main/resources; name the folder that holds it, such as"
                + " src/main/resources");
    assertThat(CommandLineRun.of("changes", docs.toString()).complaints())
        .containsExactly(
            "brake changes: there is no folder org/brakerules/rules in "
                + docs
                + "; name the folder that holds it, such as src/main/resources");
    assertThat(CommandLineRun.of("changes").exitCode()).isEqualTo(4);
  }

  private void changelog(String text) throws IOException {
    Files.writeString(docs.resolve("CHANGELOG.md"), text);
  }

  private CommandLineRun record(String version) {
    return CommandLineRun.of("changes", RULES, "--docs", docs.toString(), "--record", version);
  }
}
