package org.brakerules.harness.changes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What differs from the last release, shown line by line. */
class ChangesTest {

  private static final Path RULES = Path.of("../../brake-rules/src/main/resources");
  private static final Path DOCS = Path.of("../../docs");

  @TempDir private Path folder;
  private SmallProject project;

  @BeforeEach
  void aReleasedRuleBase() throws IOException {
    project = new SmallProject(folder);
  }

  @Test
  void theChangelogOfThisProjectSaysEverythingThatDiffersFromTheLastRelease() throws IOException {
    assertThat(Changes.of(RULES, DOCS).problems())
        .as("docs/authors/README.md says how a change of a verdict is written down")
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          drum/drum.drl        | `$part : Drum( soaked` | `$part:Drum( // wet\n soaked`
          drum/drum.drl        | limit ==              | limit   ==
          drum/drum.drl        | BeyondLimit(          | /* old: 16.5 */ BeyondLimit(
          drum/drum.drl        | Drum soaked           | Drum wet through
          drum/drum.drl        | Clean it.             | Wash it.
          drum/drum.limits.csv | a note                | another note
          drum/drum.points.csv | eye,Look over the bore. | lamp,Look closely.
          """)
  void whatDecidesNothingIsNoDifference(String file, String old, String young) throws IOException {
    project.replace(file, old, young);

    assertThat(project.report()).containsExactly("No rule, limit or point differs from 0.1.0.");
    assertThat(project.problems()).isEmpty();
  }

  @Test
  void theOrderOfConditionsAndRowsIsNoDifference() throws IOException {
    String first = "  BeyondLimit( limit == \"drum.diameter.max\", $wheelEnd : wheelEnd )\n";
    String second = "  $part : Drum( wheelEnd == $wheelEnd )\n";
    project.replace(SmallProject.RULES, first + second, second + first);

    assertThat(project.report()).containsExactly("No rule, limit or point differs from 0.1.0.");
  }

  @Test
  void aChangedRuleIsShownByTheLinesThatWentAndThoseThatCame() throws IOException {
    project.replace(SmallProject.RULES, "soaked == Sign.SEEN", "soaked != Sign.NOT_SEEN");
    project.replace(SmallProject.RULES, "verdict.clean", "verdict.replace");

    assertThat(project.report())
        .containsExactly(
            "1 differs from 0.1.0:",
            "DRUM-020 (rule, changed)",
            "  - when $part : Drum( soaked == Sign.SEEN )",
            "  - then verdict.clean( $part )",
            "  + when $part : Drum( soaked != Sign.NOT_SEEN )",
            "  + then verdict.replace( $part )");
  }

  @Test
  void aChangedLimitIsShownByTheRowThatChanged() throws IOException {
    project.replace(SmallProject.LIMITS, "15.120 in", "15.090 in");

    assertThat(project.report())
        .containsExactly(
            "1 differs from 0.1.0:",
            "drum.diameter.max (limit, changed)",
            "  - comparison at most | value 15.120 in | methods drum-gauge"
                + " | applies-to layout.drumDiameter=15 in | source COMMON-PRACTICE",
            "  + comparison at most | value 15.090 in | methods drum-gauge"
                + " | applies-to layout.drumDiameter=15 in | source COMMON-PRACTICE");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          drum/drum.drl        | COMMON-PRACTICE")    | COMMON-PRACTICE#2") | DRUM-010 (rule, changed)
          drum/drum.drl        | DRUM-020             | DRUM-030            | DRUM-020 (rule, removed)
          drum/drum.drl        | DRUM-020             | DRUM-030            | DRUM-030 (rule, added)
          drum/drum.points.csv | drum.soaked,         | drum.soaked-bore,   | drum.soaked (point, removed)
          drum/drum.points.csv | drum.soaked,         | drum.soaked-bore,   | drum.soaked-bore (point, added)
          drum/drum.points.csv | always,at-rest,fault | on-demand,at-rest,fault | drum.soaked (point, changed)
          drum/drum.limits.csv | at most,16           | less than,16        | drum.diameter.max (limit, changed)
          sources.csv          | common-practice,     | standard,           | COMMON-PRACTICE (source, changed)
          rule-sets/us-federal/rule-set.csv | 80 psi               | 85 psi              | us-federal (rule-set, changed)
          rule-sets/us-federal/rule-set.csv | 1994-10-20           | 1994-10-21          | us-federal (rule-set, changed)
          """)
  void whatCanChangeAVerdictIsADifference(String file, String old, String young, String line)
      throws IOException {
    project.replace(file, old, young);

    assertThat(project.report()).contains(line);
  }

  @Test
  void aSourceThatWasAddedIsNoDifference() throws IOException {
    project.replace(
        SmallProject.SOURCES, "note\n", "note\nUS-49-CFR-393.47,Brakes,law,us-federal,\n");

    assertThat(project.report()).containsExactly("No rule, limit or point differs from 0.1.0.");
  }

  @Test
  void aFolderWithoutARecordIsRefused() throws IOException {
    Files.delete(project.docs().resolve("releases/0.1.0.csv"));

    assertThatThrownBy(project::problems)
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("there is no record of a release that ")
        .hasMessageEndingWith(
            " names; put the last one on record with brake changes --record VERSION");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          rule,DRUM-020,drum,when | rool,DRUM-020,drum,when | "rool" is no kind
          rule,DRUM-020,drum,then verdict.clean( $part ) | rule,DRUM-020 | a row has no "text"
          """)
  void aRecordThatWasSpoiledIsRefused(String old, String young, String message) throws IOException {
    Path file = project.docs().resolve("releases/0.1.0.csv");
    Files.writeString(file, Files.readString(file).replace(old, young));

    assertThatThrownBy(project::problems)
        .isInstanceOf(IOException.class)
        .hasMessageContaining("0.1.0.csv is no record of a release: " + message);
  }
}
