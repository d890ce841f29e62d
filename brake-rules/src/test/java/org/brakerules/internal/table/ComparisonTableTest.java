package org.brakerules.internal.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.brakerules.limit.Limit;
import org.brakerules.model.job.RuleSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A rule set that holds the figures of all on another side. */
class ComparisonTableTest {

  private static final String LIMITS =
      "id,part,property,comparison,value,station,methods,moment,applies-to,rule-set,from,to,"
          + "source,note";
  private static final String COMPARISONS = "limit,comparison,source,note,rule-set";
  private static final String OF_ALL =
      "camshaft.end-play.max,camshaft,endPlay,at most,0.030 in,,,,axle.kind=drive,,,,COMMON-PRACTICE,";
  private static final String OF_QUEBEC =
      "camshaft.end-play.max,camshaft,endPlay,at most,0.040 in,,,,axle.kind=steer,quebec,,,COMMON-PRACTICE,";
  private static final String LESS = "camshaft.end-play.max,less than,QUEBEC-C-24.2-R-32#1,,quebec";
  private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "us-federal, at most 0.030 in,   COMMON-PRACTICE",
    "quebec,     less than 0.030 in, QUEBEC-C-24.2-R-32#1",
  })
  void a_row_of_all_holds_as_each_rule_set_holds_it(String ruleSet, String passes, String source) {
    assertThat(table(List.of(OF_ALL), LESS).rows("camshaft.end-play.max"))
        .extracting(LimitRow::limit)
        .filteredOn(limit -> limit.holds(DAY, new RuleSet(ruleSet)))
        .singleElement()
        .satisfies(
            limit -> {
              assertThat(limit.inWords()).isEqualTo(passes);
              assertThat(limit.source().citation()).isEqualTo(source);
            });
  }

  @Test
  void the_law_of_the_row_is_that_of_the_rule_set() {
    assertThat(table(List.of(OF_ALL), LESS).rows("camshaft.end-play.max"))
        .filteredOn(LimitRow::byComparison)
        .singleElement()
        .satisfies(row -> assertThat(row.law()).contains(new RuleSet("quebec")));
  }

  @Test
  void a_row_of_one_rule_set_stays_as_it_is_written() {
    assertThat(table(List.of(OF_ALL, OF_QUEBEC), LESS).rows("camshaft.end-play.max"))
        .extracting(LimitRow::limit)
        .filteredOn(limit -> limit.appliesTo().equals("axle.kind=steer"))
        .extracting(Limit::inWords)
        .containsExactly("at most 0.040 in");
  }

  @Test
  void without_a_row_of_all_there_is_nothing_to_hold() {
    assertThatThrownBy(() -> table(List.of(OF_QUEBEC), LESS))
        .isInstanceOf(RuleBaseException.class)
        .hasMessage(
            "invented.csv line 2: no row of a limit \"camshaft.end-play.max\" holds in every rule set.");
  }

  @Test
  void a_limit_is_held_on_one_side_only() {
    assertThatThrownBy(() -> table(List.of(OF_ALL), LESS, LESS))
        .isInstanceOf(RuleBaseException.class)
        .hasMessage("invented.csv line 3: \"camshaft.end-play.max\" is there twice.");
  }

  private static LimitTable table(List<String> limits, String... comparisons) {
    Tables standard = Tables.load();
    return new LimitTable(
        TableTexts.rows(LIMITS, limits.toArray(String[]::new)),
        TableTexts.rows(COMPARISONS, comparisons),
        standard.sources(),
        standard.ruleSets());
  }
}
