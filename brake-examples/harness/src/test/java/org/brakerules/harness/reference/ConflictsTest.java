package org.brakerules.harness.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of conflicts speaks of sources, limits and rules that are there. */
class ConflictsTest {

  private static final Material MATERIAL = Material.standard();

  static List<Conflict> conflicts() {
    return MATERIAL.conflicts();
  }

  @ParameterizedTest
  @MethodSource("conflicts")
  void a_conflict_cites_clauses_that_something_in_the_rule_base_cites(Conflict conflict) {
    assertThat(conflict.clauses()).isNotEmpty().allMatch(ConflictsTest::isCited);
  }

  @ParameterizedTest
  @MethodSource("conflicts")
  void a_conflict_concerns_limits_and_rules_that_are_there(Conflict conflict) {
    assertThat(conflict.concerns())
        .isNotEmpty()
        .allMatch(id -> MATERIAL.rule(id).isPresent() || !MATERIAL.limit(id).isEmpty());
  }

  @ParameterizedTest
  @MethodSource("conflicts")
  void a_conflict_says_both_sides_which_is_taken_and_why(Conflict conflict) {
    assertThat(List.of("what", "source-a", "says-a", "says-b", "default-takes", "why"))
        .allSatisfy(column -> assertThat(conflict.row().get(column)).as(column).isNotBlank());
    assertThat(conflict.row().get("why")).endsWith(".");
  }

  @ParameterizedTest
  @MethodSource("conflicts")
  void what_is_from_memory_is_no_side_of_a_conflict(Conflict conflict) {
    Set<String> memory =
        MATERIAL.files().rows("sources.csv").stream()
            .filter(row -> row.get("standing").equals("memory"))
            .map(row -> row.get("id"))
            .collect(Collectors.toSet());
    assertThat(conflict.clauses().stream().map(Citation::source))
        .doesNotContainAnyElementsOf(memory);
  }

  @Test
  void no_conflict_is_there_twice() {
    assertThat(conflicts()).extracting(Conflict::id).isNotEmpty().doesNotHaveDuplicates();
  }

  @Test
  void a_limit_and_a_rule_name_the_conflicts_that_concern_them() {
    var pages = ReferenceBook.standard().pages();
    assertThat(pages.get("limits.md"))
        .contains("Sources differ: [pawl-torque](conflicts.md#pawl-torque)");
    assertThat(pages.get("components/slack-adjuster.md"))
        .contains("Sources differ: [pawl-torque](../conflicts.md#pawl-torque)");
  }

  private static boolean isCited(String citation) {
    return Clause.allOf(Citation.source(citation), MATERIAL).stream()
        .anyMatch(clause -> clause.citation().equals(citation));
  }
}
