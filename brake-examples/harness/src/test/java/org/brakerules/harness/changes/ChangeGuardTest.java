package org.brakerules.harness.changes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the changelog must say of a difference, and what no changelog excuses. */
class ChangeGuardTest {

  @TempDir private Path folder;
  private SmallProject project;

  @BeforeEach
  void aReleasedRuleBase() throws IOException {
    project = new SmallProject(folder);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          drum/drum.drl        | verdict.clean | verdict.replace | DRUM-020          | rule, changed
          drum/drum.limits.csv | 16.620 in     | 16.625 in       | drum.diameter.max | limit, changed
          drum/drum.points.csv | drum.soaked,drum,soaked,,drum-off,,always,at-rest,fault,eye,Look over the bore. | '' | drum.soaked | point, removed
          """)
  void aDifferenceThatTheChangelogDoesNotNameIsAskedFor(
      String file, String old, String young, String id, String what) throws IOException {
    project.unreleased("- Prose that names no id.");
    project.replace(file, old, young);

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:3: `%s` (%s) is not named; write under **Verdicts** - `%s`, from YYYY-MM-DD, who sees another verdict: what and why"
                .formatted(id, what, id));
  }

  @Test
  void withoutASectionAboveTheLastReleaseOneIsAskedFor() throws IOException {
    project.replace(SmallProject.RULES, "verdict.clean", "verdict.replace");

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:1: `DRUM-020` (rule, changed) is not named; begin a section \"## Unreleased\" and write under **Verdicts** - `DRUM-020`, from YYYY-MM-DD, who sees another verdict: what and why");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "- `DRUM-020`, from 2026-12-01, all soaked drums: replaced, not cleaned.",
        "- `DRUM-010` and `DRUM-020`, from 2026-12-01, all drums: why",
        "- `drum.soaked`, `DRUM-010`, and `DRUM-020`, from 2026-12-01, drums under us-federal: why",
        "- `DRUM-020`, from 2026-12-01,\n  all soaked\n  drums: why"
      })
  void anEntryWithIdDayAndWhoSaysEverything(String entry) throws IOException {
    project.unreleased(entry);
    project.replace(SmallProject.RULES, "verdict.clean", "verdict.replace");

    assertThat(project.problems()).isEmpty();
  }

  @Test
  void theSectionMayBearTheVersionThatIsToBeReleased() throws IOException {
    project.changelog(
        """
        ## 0.2.0 (2026-12-01)

        **Verdicts**

        - `DRUM-020`, from 2026-12-01, all soaked drums: why

        ## 0.1.0 (2026-11-25)
        """);
    project.replace(SmallProject.RULES, "verdict.clean", "verdict.replace");

    assertThat(project.problems()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "**Code**\n\n- `DRUM-020`, from 2026-12-01, all soaked drums: why",
        "## 0.1.0\n\n**Verdicts**\n\n- `DRUM-020`, from 2026-12-01, all soaked drums: why"
      })
  void anEntryInAnotherPlaceDoesNotCount(String entry) throws IOException {
    project.unreleased(entry);
    project.replace(SmallProject.RULES, "verdict.clean", "verdict.replace");

    assertThat(project.problems())
        .singleElement()
        .asString()
        .startsWith("docs/CHANGELOG.md:3: `DRUM-020` (rule, changed) is not named;");
  }

  @Test
  void anEntryWithoutADayIsAskedForIt() throws IOException {
    project.unreleased("- `DRUM-020`, all soaked drums: why");

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:7: `DRUM-020` from which day on? Write it behind the ids, such as \", from 2026-12-01\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"December", "2026-02-30", "2026-13-01", "01.12.2026"})
  void aDayThatTheCalendarDoesNotHaveIsNamed(String day) throws IOException {
    project.unreleased("- `DRUM-020`, from " + day + ", all soaked drums: why");

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:7: `DRUM-020` from which day on? \"%s\" is no day of the calendar; write one as YYYY-MM-DD, such as \", from 2026-12-01\""
                .formatted(day));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "- `DRUM-020`, from 2026-12-01: replaced, not cleaned",
        "- `DRUM-020`, from 2026-12-01, : replaced, not cleaned",
        "- `DRUM-020`, from 2026-12-01, all soaked drums are replaced"
      })
  void anEntryThatDoesNotSayWhoIsAskedForIt(String entry) throws IOException {
    project.unreleased(entry);

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:7: `DRUM-020` for whom? Write between the day and a colon who sees another verdict, such as \", all drums under us-federal:\"");
  }

  @Test
  void anEntryThatIsOnlyAnIdIsAskedForBoth() throws IOException {
    project.unreleased("- `DRUM-010`, `DRUM-020`");

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:7: `DRUM-010`, `DRUM-020` from which day on? Write it behind the ids, such as \", from 2026-12-01\"",
            "docs/CHANGELOG.md:7: `DRUM-010`, `DRUM-020` for whom? Write between the day and a colon who sees another verdict, such as \", all drums under us-federal:\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          drum.diametre.max | did you mean `drum.diameter.max`?
          HOSE-010          | name one that is
          """)
  void anEntryThatNamesNoIdOfAnyReleaseIsAMistake(String id, String remedy) throws IOException {
    project.unreleased("- `" + id + "`, from 2026-12-01, all drums: why");

    assertThat(project.problems())
        .containsExactly("docs/CHANGELOG.md:7: `" + id + "` is no id of the rule base; " + remedy);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "`DRUM-010` to `drum.soaked`",
        "`DRUM-010` to drum.soaked",
        "`DRUM-010`..`drum.soaked`",
        "`DRUM-010` - `drum.soaked`"
      })
  void aRangeIsToldWithTheIdsThatItWouldName(String range) throws IOException {
    project.unreleased("- " + range + ", from 2026-12-01, all drums: why");

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:7: `DRUM-010` to `drum.soaked` is a range, and names none of those between; write each id by itself, `DRUM-010`, `DRUM-020`, `drum.diameter`, `drum.diameter.max`, `drum.soaked`");
  }

  @Test
  void aRangeInOnePairOfBackticksOrToAnUnknownIdIsToldHowToWriteIt() throws IOException {
    project.unreleased(
        """
        - `DRUM-010..020`, from 2026-12-01, all drums: why
        - `DRUM-010` to `DRUM-090`, from 2026-12-01, all drums: why\
        """);

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:7: `DRUM-010..020` is a range, which names nothing; write each id by itself, in backticks, with commas between",
            "docs/CHANGELOG.md:8: `DRUM-010` to `DRUM-090` is a range, and names none of those between; write each id by itself, in backticks, with commas between");
  }

  @Test
  void anIdWithoutBackticksBehindOthersIsToldAndNothingElseIsAsked() throws IOException {
    project.unreleased("- `DRUM-010`, DRUM-020, from 2026-12-01, all drums: why");

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:7: DRUM-020 stands without backticks and is not read; write `DRUM-020`");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "- DRUM-020, from 2026-12-01, all soaked drums: why",
        "- Of `DRUM-020`, from 2026-12-01, all soaked drums: why",
        "- Soaked drums\n  are replaced by DRUM-020."
      })
  void aDifferenceThatIsNamedInProseOnlyIsToldWhereItStands(String entry) throws IOException {
    project.unreleased(entry);
    project.replace(SmallProject.RULES, "verdict.clean", "verdict.replace");

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:7: DRUM-020 is named in prose only, which is not read; begin the entry - `DRUM-020`, from YYYY-MM-DD, who sees another verdict: what and why");
  }

  @Test
  void anEntryThatBeginsWithAnIdWithoutBackticksIsToldThoughNothingDiffers() throws IOException {
    project.unreleased("- DRUM-020, from 2026-12-01, all soaked drums: why");

    assertThat(project.problems())
        .singleElement()
        .asString()
        .startsWith("docs/CHANGELOG.md:7: DRUM-020 is named in prose only");
  }

  @Test
  void proseMaySpeakOfAnIdThatAnotherEntryNamesOrThatDoesNotDiffer() throws IOException {
    project.unreleased(
        """
        - `DRUM-020`, from 2026-12-01, all soaked drums: why
        - Like DRUM-010, so DRUM-020 replaces.\
        """);
    project.replace(SmallProject.RULES, "verdict.clean", "verdict.replace");

    assertThat(project.problems()).isEmpty();
  }

  @Test
  void anIdThatIsNowAboutSomethingElseIsUsedAgain() throws IOException {
    project.unreleased("- `DRUM-020`, from 2026-12-01, all linings: why");
    project.replace(SmallProject.RULES, "$part : Drum( soaked", "$part : Lining( glazed");

    assertThat(project.problems())
        .containsExactly(
            "`DRUM-020` is used again: in 0.1.0 it was a rule of drum, now it is a rule of lining; give the new one an id that was never used");
  }

  @Test
  void anIdThatCameBackIsUsedAgain() throws IOException {
    project.replace(SmallProject.RULES, "DRUM-020", "DRUM-030");
    project.changelog(
        """
        ## 0.2.0 (2026-11-30)

        **Verdicts**

        - `DRUM-020`, `DRUM-030`, from 2026-11-30, all soaked drums: why

        ## 0.1.0
        """);
    assertThat(project.record("0.2.0")).isEmpty();
    project.replace(SmallProject.RULES, "DRUM-030", "DRUM-020");
    project.changelog(
        """
        ## Unreleased

        **Verdicts**

        - `DRUM-020`, `DRUM-030`, from 2026-12-01, all soaked drums: why

        ## 0.2.0
        ## 0.1.0
        """);

    assertThat(project.problems())
        .containsExactly(
            "`DRUM-020` is used again: 0.1.0 had it, 0.2.0 no longer; give the new one an id that was never used");
  }

  @Test
  void aReleaseThatNobodyRecordedIsAskedFor() throws IOException {
    project.changelog("## Unreleased\n## 0.2.0 (2026-12-01)\n## 0.1.0 (2026-11-25)\n");

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md:4: 0.2.0 is not on record; go back to the rule base as it was released, and put it there with brake changes --record 0.2.0");
  }

  @Test
  void aRecordWithoutASectionIsAMistake() throws IOException {
    project.changelog("## 0.2.0 (2026-12-01)\n## 0.1.0 (2026-11-25)\n");
    assertThat(project.record("0.2.0")).isEmpty();
    project.changelog("## 0.1.0 (2026-11-25)\n");

    assertThat(project.problems())
        .containsExactly(
            "docs/CHANGELOG.md: no section for docs/releases/0.2.0.csv; begin it with \"## VERSION\"");
  }
}
