package org.brakerules.trial.internal.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.brakerules.internal.table.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every slip in a row of limits is a change that is tried. */
class LimitChangesTest {

  @Test
  void a_row_is_changed_cell_by_cell() {
    Row row =
        row(
            Map.of(
                "id", "lining.thickness.min",
                "comparison", "at least",
                "value", "1/4 in",
                "station", "shoe-centre",
                "methods", "caliper;steel-rule",
                "applies-to", "axle.kind=steer; layout.liningPieces=strip",
                "rule-set", "us-federal",
                "from", "2021-10-14"));

    assertThat(LimitChanges.of(List.of(row), List.of()))
        .extracting(LimitChange::words)
        .containsExactly(
            "row left out",
            "comparison \"at least\" became \"more than\"",
            "comparison \"at least\" became \"at most\"",
            "value \"1/4 in\" became \"15/64 in\"",
            "value \"1/4 in\" became \"17/64 in\"",
            "station \"shoe-centre\" became \"\"",
            "methods \"caliper;steel-rule\" became \"steel-rule\"",
            "methods \"caliper;steel-rule\" became \"caliper\"",
            "applies-to \"axle.kind=steer; layout.liningPieces=strip\" became"
                + " \"layout.liningPieces=strip\"",
            "applies-to \"axle.kind=steer; layout.liningPieces=strip\" became"
                + " \"axle.kind=steer\"",
            "rule-set \"us-federal\" became \"\"",
            "from \"2021-10-14\" became \"2021-10-13\"",
            "from \"2021-10-14\" became \"2021-10-15\"");
  }

  @Test
  void a_row_of_comparisons_is_left_out_and_turned() {
    Row limit = row(Map.of("id", "a.max", "comparison", "at most", "value", "1 in"));
    Row held = row(Map.of("limit", "a.max", "comparison", "less than", "rule-set", "here"));

    assertThat(LimitChanges.of(List.of(limit), List.of(held)))
        .filteredOn(change -> !change.comparisons().equals(List.of(held)))
        .allSatisfy(change -> assertThat(change.rows()).containsExactly(limit))
        .extracting(LimitChange::words)
        .containsExactly(
            "row left out",
            "comparison \"less than\" became \"at most\"",
            "comparison \"less than\" became \"more than\"");
  }

  @Test
  void only_one_row_is_changed_at_a_time() {
    Row first = row(Map.of("id", "a.max", "comparison", "at most", "value", "1 in"));
    Row second = row(Map.of("id", "b.max", "comparison", "at most", "value", "2 in"));

    assertThat(LimitChanges.of(List.of(first, second), List.of()))
        .allSatisfy(
            change -> assertThat(change.rows()).containsAnyElementsOf(List.of(first, second)));
  }

  @ParameterizedTest(name = "{0}: {1} and {2}")
  @CsvSource({
    "0.020 in,  0.019 in,  0.021 in",
    "16.620 in, 16.619 in, 16.621 in",
    "5 mm,      4 mm,      6 mm",
    "50 %,      49 %,      51 %",
    "1/4 in,    15/64 in,  17/64 in",
    "1 3/4 in,  111/64 in, 113/64 in",
  })
  void a_value_moves_by_the_last_digit_written_or_a_sixty_fourth(
      String value, String less, String more) {
    assertThat(NextValue.of(value)).containsExactly(less, more);
  }

  @Test
  void a_value_that_is_not_written_does_not_move() {
    assertThat(Stream.of("", "80 % of layout.chamber.ratedStroke").flatMap(NextValue::of))
        .containsExactly(
            "79 % of layout.chamber.ratedStroke", "81 % of layout.chamber.ratedStroke");
  }

  private static Row row(Map<String, String> cells) {
    return new Row("lining/lining.limits.csv", 2, new LinkedHashMap<>(cells));
  }
}
