package org.brakerules.harness.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.brakerules.harness.UsageMistake;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which release may be put on record, and what must be said first. */
class RecordingTest {

  private static final String NEWEST = "## 0.2.0 (2026-12-01)\n";
  private static final String OLDEST = "## 0.1.0 (2026-11-25)\n";

  @TempDir private Path folder;
  private SmallProject project;

  @BeforeEach
  void aReleasedRuleBase() throws IOException {
    project = new SmallProject(folder);
  }

  @AfterEach
  void noFileIsHalfWritten() throws IOException {
    try (Stream<Path> files = Files.list(project.docs().resolve("releases"))) {
      assertThat(files).allMatch(file -> file.toString().endsWith(".csv"));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.1.1", "0.2.0", "0.10.0", "1.0.0"})
  void aNewerReleaseWithItsDayIsPutOnRecord(String version) throws IOException {
    project.changelog("## " + version + " (2026-12-01)\n\n" + OLDEST);

    assertThat(project.record(version)).isEmpty();

    assertThat(project.docs().resolve("releases/" + version + ".csv")).exists();
  }

  @ParameterizedTest
  @ValueSource(strings = {"banana", "", "1", "1.2", "1.2.3.4", "v1.2.3", "01.2.3", "1.2.3-rc1"})
  void whatIsNoVersionIsRefused(String version) {
    assertThatThrownBy(() -> project.record(version))
        .isInstanceOf(UsageMistake.class)
        .hasMessage("\"" + version + "\" is no version; write one like 1.2.3");
  }

  @ParameterizedTest
  @CsvSource({"0.0.9", "0.1.9", "0.2.0"})
  void aReleaseThatIsOlderThanAnyOnRecordIsRefused(String version) throws IOException {
    project.changelog("## 0.10.0 (2026-12-01)\n" + OLDEST);
    project.record("0.10.0");

    assertThatThrownBy(() -> project.record(version))
        .isInstanceOf(UsageMistake.class)
        .hasMessageEndingWith(", which is on record; name a newer one, such as %s", "0.10.1")
        .hasMessageStartingWith(version + " is older than 0.10.0");
  }

  @Test
  void aReleaseOnRecordIsNotWrittenAnew() {
    assertThatThrownBy(() -> project.record("0.1.0"))
        .isInstanceOf(UsageMistake.class)
        .hasMessageStartingWith("0.1.0 is on record: ")
        .hasMessageEndingWith(
            "releases/0.1.0.csv; a release does not change afterwards, so record a newer one");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Unreleased         | the newest section is "Unreleased", not 0.2.0
          0.3.0 (2026-12-01) | the newest section is "0.3.0", not 0.2.0
          0.2.0              | the section of 0.2.0 does not say its day
          0.2.0 2026-12-01   | the section of 0.2.0 does not say its day
          0.2.0 (soon)       | "soon" is no day of the calendar
          0.2.0 (2026-13-01) | "2026-13-01" is no day of the calendar
          """)
  void theNewestSectionMustBeThatReleaseWithItsDay(String heading, String problem)
      throws IOException {
    project.changelog("## " + heading + "\n\n" + OLDEST);

    assertThat(project.record("0.2.0"))
        .containsExactly(
            "docs/CHANGELOG.md:3: "
                + problem
                + "; write \"## 0.2.0 (YYYY-MM-DD)\", with the day of the release");
    assertThat(project.docs().resolve("releases/0.2.0.csv")).doesNotExist();
  }

  @Test
  void aChangelogWithoutASectionIsToldHowToBeginOne() throws IOException {
    Files.delete(project.docs().resolve("releases/0.1.0.csv"));
    project.changelog("");

    assertThat(project.record("0.2.0"))
        .containsExactly(
            "docs/CHANGELOG.md:1: there is no section; begin one with \"## 0.2.0 (YYYY-MM-DD)\", with the day of the release");
  }

  @Test
  void whatTheChangelogLeavesUnsaidKeepsAReleaseOffTheRecord() throws IOException {
    project.changelog(NEWEST + OLDEST);
    project.replace(SmallProject.RULES, "verdict.clean", "verdict.replace");

    assertThat(project.record("0.2.0"))
        .singleElement()
        .asString()
        .startsWith("docs/CHANGELOG.md:3: `DRUM-020` (rule, changed) is not named;");
    assertThat(project.docs().resolve("releases/0.2.0.csv")).doesNotExist();
  }

  @Test
  void aFileThatIsNamedAfterNoVersionIsInTheWay() throws IOException {
    Path record = project.docs().resolve("releases/0.1.0.csv");
    Files.copy(record, record.resolveSibling("banana.csv"));
    project.changelog(NEWEST + OLDEST);

    assertThatThrownBy(() -> project.record("0.2.0"))
        .isInstanceOf(IOException.class)
        .hasMessageEndingWith(
            "releases/banana.csv is no record, for \"banana\" is no version; take it out or name it like 1.2.3.csv");
  }
}
