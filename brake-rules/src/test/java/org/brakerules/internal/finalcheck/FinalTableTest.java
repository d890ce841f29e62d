package org.brakerules.internal.finalcheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.Tables;
import org.brakerules.internal.work.StepTable;
import org.brakerules.limit.Limit;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of final checks is sound. */
class FinalTableTest {

  private static final Tables TABLES = Tables.load();
  private static final Collection<String> STEPS = StepTable.load(TABLES).ids();
  private static final FinalTable CHECKS = FinalTable.load(TABLES, STEPS);

  @Test
  void every_check_belongs_to_a_step_and_every_limit_of_one_to_one_property() {
    assertThat(CHECKS.rows())
        .hasSizeGreaterThan(20)
        .allSatisfy(
            row -> {
              assertThat(row.steps()).isNotEmpty();
              assertThat(row.limits().stream().map(FinalTableTest::property).distinct().count())
                  .isLessThanOrEqualTo(1);
            });
  }

  @Test
  void every_reading_of_a_check_can_be_held_against_its_limits() {
    for (FinalRow row : CHECKS.rows()) {
      for (String id : row.limits()) {
        Limit limit = TABLES.limits().first(id).orElseThrow();
        Place place =
            WheelEndPath.of(1, Side.LEFT)
                .place(
                    limit.part(),
                    limit.part().hasStations() ? row.station().orElseThrow() : Station.WHOLE_PART);
        assertThatCode(
                () -> FinishedPart.of(Tag.asFound(place), limit.property(), Measurement.notTaken()))
            .as(row.id())
            .doesNotThrowAnyException();
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          id       | FINAL-7             | "FINAL-7" is no id of a check; write FINAL and a ten: FINAL-030
          level    | axle                | "axle" is no level; known are vehicle, wheel-end
          with     | ASSEMBLE-999        | "ASSEMBLE-999" is no step; did you mean
          limits   | camshaft.endplay.max| "camshaft.endplay.max" is no limit; did you mean "camshaft.end-play.max"?
          station  | headend             | "headend" is no station; did you mean "head-end"?
          releases | maybe               | "maybe" is no releases; known are yes, no
          source   | COMMON-PRACTISE     | "COMMON-PRACTISE" is no source; did you mean "COMMON-PRACTICE"?
          """)
  void a_row_that_cannot_be_used_says_where_and_what_to_write(
      String column, String cell, String message) {
    Map<String, String> cells = new HashMap<>(firstRow().cells());
    cells.put(column, cell);
    List<Row> rows = List.of(new Row("final-checks.csv", 2, cells));
    assertThatThrownBy(() -> FinalTable.of(rows, TABLES, STEPS))
        .isInstanceOf(RuleBaseException.class)
        .hasMessageStartingWith("final-checks.csv line 2: " + message);
  }

  @Test
  void a_check_that_is_there_twice_is_refused() {
    assertThatThrownBy(() -> FinalTable.of(List.of(firstRow(), firstRow()), TABLES, STEPS))
        .hasMessageEndingWith("check \"FINAL-010\" is there twice.");
  }

  private static String property(String limit) {
    return TABLES.limits().first(limit).map(one -> one.part() + "." + one.property()).orElseThrow();
  }

  private static Row firstRow() {
    return CsvTable.ofResource("/org/brakerules/work/final-checks.csv").get(0);
  }
}
