package org.brakerules.internal.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.work.PartCondition.Wanted;
import org.brakerules.internal.work.StepRow.Unstated;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.PartKind;
import org.brakerules.work.Surface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The table of steps is sound. */
class StepTableTest {

  private static final Tables TABLES = Tables.load();
  private static final StepTable STEPS = StepTable.load(TABLES);

  @Test
  void every_caution_stands_at_a_step() {
    assertThat(STEPS.rows().stream().flatMap(row -> row.cautions().stream()).map(Caution::id))
        .containsAll(TABLES.cautions().ids());
  }

  @ParameterizedTest
  @EnumSource
  void every_kind_of_part_is_put_in_at_a_step_of_the_assembly_and_has_a_depth(PartKind kind) {
    assertThat(STEPS.rows())
        .anySatisfy(
            row -> {
              assertThat(row.fits()).contains(kind);
              assertThat(row.id()).startsWith("ASSEMBLE-");
            });
    assertThat(STEPS.depth(kind)).isNotNull();
  }

  @Test
  void phases_stand_in_their_order_and_ids_rise() {
    List<StepRow> rows = List.copyOf(STEPS.rows());
    for (int i = 1; i < rows.size(); i++) {
      StepRow before = rows.get(i - 1);
      StepRow row = rows.get(i);
      assertThat(row.phase()).isGreaterThanOrEqualTo(before.phase());
      if (row.phase() == before.phase()) {
        assertThat(row.id()).isGreaterThan(before.id());
      }
    }
  }

  @Test
  void rules_whose_hold_stops_at_a_step_hold_and_the_other_rules_named_mend() {
    Map<String, Verdict> verdicts = new HashMap<>();
    BrakeRules.standard().rules().forEach(rule -> verdicts.put(rule.id(), rule.verdict()));
    for (StepRow row : STEPS.rows()) {
      row.stopsFor().stream()
          .filter(rule -> !rule.equals(StepRow.OTHERWISE))
          .forEach(rule -> assertThat(verdicts).containsEntry(rule, Verdict.HOLD));
      row.forParts().stream()
          .filter(condition -> condition.wanted() == Wanted.RULE)
          .forEach(
              one ->
                  assertThat(verdicts.get(one.rule()))
                      .as(one.rule())
                      .isIn(Verdict.ADJUST, Verdict.CLEAN));
      Stream.concat(row.forParts().stream(), row.unless().stream())
          .filter(condition -> condition.wanted() == Wanted.REPLACED_BY)
          .forEach(one -> assertThat(verdicts).containsEntry(one.rule(), Verdict.REPLACE));
    }
  }

  @Test
  void every_hold_on_a_spring_brake_stops_before_anything_is_undone() {
    Stream<String> holds =
        BrakeRules.standard().rules().stream()
            .filter(rule -> rule.verdict() == Verdict.HOLD)
            .map(Rule::id)
            .filter(id -> id.startsWith("SPRING-BRAKE-"));
    assertThat(holds)
        .isNotEmpty()
        .allSatisfy(rule -> assertThat(STEPS.stopFor(rule).id()).isIn("ARRIVE-030", "SECURE-020"));
  }

  @Test
  void what_is_left_out_where_nothing_is_stated_has_a_step_for_that_case() {
    List<String> asked = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    for (StepRow row : STEPS.rows()) {
      List<String> facts =
          Stream.of(row.appliesTo().split(";"))
              .map(term -> term.split("=")[0].strip())
              .filter(fact -> fact.startsWith("layout."))
              .map(fact -> row.phase() + " " + fact)
              .toList();
      (row.unstated() == Unstated.ONLY ? asked : leftOut)
          .addAll(row.unstated() == Unstated.ASK ? List.of() : facts);
    }
    assertThat(leftOut).isNotEmpty();
    // The test of an adjuster and its setting ask for its kind once, at the teardown.
    assertThat(asked)
        .containsAll(
            leftOut.stream().filter(one -> !one.startsWith("INSPECT layout.adjuster")).toList());
  }

  @Test
  void no_grease_where_shoes_are_hung_and_every_roller_step_keeps_the_tread_dry() {
    assertThat(STEPS.rows())
        .filteredOn(row -> row.fits().contains(PartKind.CAM_ROLLER))
        .allSatisfy(
            row ->
                assertThat(row.keepsDry())
                    .contains(Surface.ROLLER_TREAD, Surface.CAM_PROFILE, Surface.LINING));
    assertThat(STEPS.rows())
        .filteredOn(row -> row.fits().contains(PartKind.LINING))
        .allSatisfy(row -> assertThat(row.greases()).isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          id         | TEARDOWN-3         | "TEARDOWN-3" is no id of a step; write a phase and three digits: TEARDOWN-030
          id         | REST-010           | "rest" is no phase; known are arrive, secure, teardown, inspect, decide, prepare, assemble, set, prove
          level      | wheel              | "wheel" is no level; known are vehicle, axle, wheel-end
          needs      | ARRIVE-010         | "ARRIVE-010" is no step above this one; known are
          hold       | yes                | a hold point, and nothing else, says in "passes-when" when it passes
          hold       | perhaps            | "perhaps" is no hold; known are yes, no
          applies-to | layout.camshaft=t  | "t" is no value of layout.camshaft; write tube, split, closed, unknown
          when       | drum-of            | "drum-of" is no when; known are from-scope, with-step, shims, hold, further, undecided, undecided-until-proof
          for-parts  | drum               | "drum" names no part; write drum: adjust
          for-parts  | drums: adjust      | "drums" is no kind of part; did you mean "drum"?
          for-parts  | drum: adjusted     | "adjusted" is no thing that can be of a part; did you mean "adjust"?
          unless     | drum: adjusted     | "adjusted" is no thing that can be of a part; did you mean "adjust"?
          unless     | drum: replace X    | "replace X" is no thing that can be of a part;
          greases    | roller-tread       | the roller tread stays dry; take it out
          keeps-dry  | anchor-pin         | the anchor pin is greased; take it out
          cautions   | snap-ring          | "snap-ring" is no caution; did you mean "snap-rings"?
          records    | play=camshaft.endplay.max | "camshaft.endplay.max" is no limit; did you mean "camshaft.end-play.max"?
          source     | COMMON-PRACTISE    | "COMMON-PRACTISE" is no source; did you mean "COMMON-PRACTICE"?
          """)
  void a_row_that_cannot_be_used_says_where_and_what_to_write(
      String column, String cell, String message) {
    Map<String, String> cells = new HashMap<>(firstRow().cells());
    cells.put(column, cell);
    List<Row> rows = List.of(new Row("steps.csv", 2, cells));
    assertThatThrownBy(() -> StepTable.of(rows, List.of(), TABLES))
        .isInstanceOf(RuleBaseException.class)
        .hasMessageStartingWith("steps.csv line 2: " + message);
  }

  @Test
  void a_step_that_is_there_twice_is_refused() {
    Row row = firstRow();
    assertThatThrownBy(() -> StepTable.of(List.of(row, row), List.of(), TABLES))
        .hasMessageEndingWith("step \"ARRIVE-010\" is there twice.");
  }

  @Test
  void a_depth_that_is_there_twice_is_refused() {
    String text = "part,replaced-from,source\ndrum,drum-off,FROM-MEMORY\ndrum,wheel-on,FROM-MEMORY";
    List<Row> depths =
        CsvTable.read(
            "depths.csv", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    assertThatThrownBy(() -> StepTable.of(List.of(), depths, TABLES))
        .hasMessage("depths.csv line 3: part \"drum\" is there twice.");
  }

  private static Row firstRow() {
    return CsvTable.ofResource("/org/brakerules/work/steps.csv").get(0);
  }
}
