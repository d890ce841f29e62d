package org.brakerules.harness.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.brakerules.harness.changelog.Changelog;
import org.junit.jupiter.api.Test;

/** The history of a page is what the changelog says of its ids. */
class HistoryTest {

  private static final Set<String> KNOWN =
      Set.of(
          "CLEVIS-01",
          "CLEVIS-010",
          "clevis.pin-clearance",
          "clevis.pin-clearance.max",
          "DRUM-010");

  private static final History HISTORY =
      history(
          """
          # Changelog

          - Before any release.

          ## 0.3.0 (2027-06-01)

          - `CLEVIS-010` no longer condemns a new clevis; [the limit](reference/limits.md) stays.

          ## 0.2.0 (2027-01-01)

          **Verdicts**

          - From [the manual](https://example.org):
            clevis.pin-clearance.max
            is finer.
          - Words only.

          ## 0.1.0 (2026-11-25)

          - Rules for every part.
          """);

  @Test
  void an_entry_that_names_an_id_is_told_with_its_release_newest_first() {
    assertThat(HISTORY.of(List.of("CLEVIS-010", "clevis.pin-clearance.max")).lines())
        .containsExactly(
            "- 0.3.0 (2027-06-01): `CLEVIS-010` no longer condemns a new clevis; the limit stays.",
            "- 0.2.0 (2027-01-01): From the manual: clevis.pin-clearance.max is finer.",
            "- Everything else on this page: since 0.1.0 (2026-11-25).");
  }

  @Test
  void an_id_that_no_entry_names_came_with_the_first_release() {
    assertThat(HISTORY.of(List.of("DRUM-010")))
        .isEqualTo("- Everything on this page: since 0.1.0 (2026-11-25).\n");
  }

  @Test
  void an_id_inside_a_longer_one_is_not_named() {
    assertThat(HISTORY.of(List.of("CLEVIS-01", "clevis.pin-clearance")))
        .startsWith("- Everything on this page");
  }

  @Test
  void what_an_author_added_did_not_come_with_the_first_release() {
    assertThat(HISTORY.of(List.of("DRUM-010", "DRUM-999", "drum.new-look")))
        .isEqualTo(
            """
            - Not in a release of this program: `DRUM-999`, `drum.new-look`.
            - Everything else on this page: since 0.1.0 (2026-11-25).
            """);
  }

  @Test
  void the_changelog_of_this_program_names_its_first_release() {
    assertThat(History.ofThisArtifact().releases())
        .last()
        .satisfies(first -> assertThat(first.title()).startsWith("0.1.0 ("))
        .satisfies(first -> assertThat(first.entries()).isNotEmpty());
  }

  @Test
  void a_text_without_a_release_is_no_changelog() {
    assertThatThrownBy(() -> history("# Changelog\n"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("The changelog names no release.");
  }

  private static History history(String markdown) {
    return new History(Changelog.read("CHANGELOG.md", markdown).sections(), KNOWN);
  }
}
