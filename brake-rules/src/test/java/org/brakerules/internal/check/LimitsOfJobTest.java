package org.brakerules.internal.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.TableTexts;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which limits hold for a part: by date, rule set, configuration and maker. All rows invented. */
class LimitsOfJobTest {

  private static final String ID = "camshaft.end-play.max";
  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final RuleSet FEDERAL = new RuleSet("us-federal");
  private static final RuleSet QUEBEC = new RuleSet("quebec");
  private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

  private static final String DEFAULT =
      "camshaft.end-play.max,camshaft,endPlay,at most,0.030 in,,,,,,,,COMMON-PRACTICE,";
  private static final String LAW =
      "camshaft.end-play.max,camshaft,endPlay,at most,0.040 in,,,,,quebec,,,QUEBEC-C-24.2-R-32#1,";

  @ParameterizedTest
  @CsvSource({
    "2020-12-31, 0.030 in",
    "2021-01-01, 0.020 in",
    "2021-01-02, 0.020 in",
    "2021-06-29, 0.020 in",
    "2021-06-30, 0.020 in",
    "2021-07-01, 0.010 in",
  })
  void the_first_and_the_last_day_belong_to_a_limit(LocalDate date, String expected) {
    LimitTable table =
        TableTexts.limits(
            "camshaft.end-play.max,camshaft,endPlay,at most,0.030"
                + " in,,,,,,,2020-12-31,COMMON-PRACTICE,",
            "camshaft.end-play.max,camshaft,endPlay,at most,0.020"
                + " in,,,,,,2021-01-01,2021-06-30,COMMON-PRACTICE,",
            "camshaft.end-play.max,camshaft,endPlay,at most,0.010"
                + " in,,,,,,2021-07-01,,COMMON-PRACTICE,");
    assertThat(values(table, date, FEDERAL, CamshaftLayout.TUBE)).containsExactly(expected);
  }

  @Test
  void a_limit_of_one_rule_set_is_silent_under_another() {
    LimitTable table = TableTexts.limits(LAW);
    assertThat(values(table, DAY, QUEBEC, CamshaftLayout.TUBE)).containsExactly("0.040 in");
    assertThat(values(table, DAY, FEDERAL, CamshaftLayout.TUBE)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"TUBE, 0.030 in", "SPLIT, 0.050 in"})
  void each_configuration_has_its_own_row(CamshaftLayout layout, String expected) {
    assertThat(values(ofTwoLayouts(), DAY, FEDERAL, layout)).containsExactly(expected);
  }

  @ParameterizedTest
  @CsvSource({"CLOSED, ''", "UNKNOWN, layout.camshaft"})
  void no_row_fits_a_closed_layout_and_none_is_chosen_for_an_unstated_one(
      CamshaftLayout layout, String unstated) {
    LimitsOfJob limits = new LimitsOfJob(ofTwoLayouts(), DAY, FEDERAL, List.of());
    assertThat(limits.inForce(ID, subject(layout))).isEmpty();
    assertThat(String.join(";", limits.unstated(ID, subject(layout)))).isEqualTo(unstated);
  }

  @Test
  void a_makers_limit_displaces_a_default_smaller_or_larger() {
    LimitTable table = TableTexts.limits(DEFAULT);
    assertThat(values(table, FEDERAL, makers("", "0.050 in"))).containsExactly("0.05 in");
    assertThat(values(table, FEDERAL, makers("", "0.010 in"))).containsExactly("0.01 in");
  }

  @Test
  void a_makers_limit_stands_beside_a_law() {
    LimitTable table = TableTexts.limits(LAW);
    assertThat(values(table, QUEBEC, makers("", "0.050 in")))
        .containsExactly("0.040 in", "0.05 in");
  }

  /** The federal law serves as a default under another rule set, where a maker displaces it. */
  @Test
  void a_makers_limit_displaces_the_law_of_another_rule_set() {
    LimitTable table =
        TableTexts.limits(DEFAULT.replace("COMMON-PRACTICE", "US-49-CFR-393.47#(e)(1)"));
    assertThat(values(table, QUEBEC)).containsExactly("0.030 in");
    assertThat(values(table, QUEBEC, makers("", "0.050 in"))).containsExactly("0.05 in");
    assertThat(values(table, FEDERAL, makers("", "0.050 in")))
        .containsExactly("0.030 in", "0.05 in");
  }

  @Test
  void a_row_without_a_value_holds_only_with_the_makers() {
    LimitTable table = TableTexts.limits(DEFAULT.replace("0.030 in", ""));
    assertThat(values(table, FEDERAL)).isEmpty();
    assertThat(values(table, FEDERAL, makers("", "0.050 in"))).containsExactly("0.05 in");
  }

  @ParameterizedTest
  @CsvSource({
    "TUBE,    0.030 in, ''",
    "CLOSED,  0.060 in, ''",
    "UNKNOWN, '',       layout.camshaft",
  })
  void the_row_for_the_rest_holds_where_no_other_fits_or_could(
      CamshaftLayout layout, String expected, String unstated) {
    LimitTable table =
        TableTexts.limits(
            DEFAULT.replace("in,,,,,", "in,,,,layout.camshaft=tube|split,"),
            DEFAULT.replace("0.030 in,,,,,", "0.060 in,,,,otherwise,"));
    LimitsOfJob limits = new LimitsOfJob(table, DAY, FEDERAL, List.of());
    assertThat(String.join(";", values(limits, subject(layout)))).isEqualTo(expected);
    assertThat(String.join(";", limits.unstated(ID, subject(layout)))).isEqualTo(unstated);
  }

  @Test
  void the_row_for_the_rest_of_another_rule_set_is_silent() {
    LimitTable table =
        TableTexts.limits(
            DEFAULT.replace("in,,,,,", "in,,,,layout.camshaft=tube,"),
            LAW.replace("0.040 in,,,,,", "0.040 in,,,,otherwise,"));
    Subject closed = subject(CamshaftLayout.CLOSED);
    assertThat(new LimitsOfJob(table, DAY, FEDERAL, List.of()).rows(ID, closed)).isEmpty();
    assertThat(new LimitsOfJob(table, DAY, QUEBEC, List.of()).rows(ID, closed)).hasSize(1);
  }

  @Test
  void a_limit_is_of_a_job_only_under_its_own_rule_set() {
    LimitTable table = TableTexts.limits(LAW);
    assertThat(new LimitsOfJob(table, DAY, QUEBEC, List.of()).isOfThisJob(ID)).isTrue();
    assertThat(new LimitsOfJob(table, DAY, FEDERAL, List.of()).isOfThisJob(ID)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "quebec,     UNKNOWN, true,  true",
    "quebec,     TUBE,    true,  false",
    "quebec,     UNKNOWN, false, false",
    "us-federal, UNKNOWN, true,  false",
  })
  void a_law_is_open_beside_a_maker_where_it_hangs_on_what_is_not_stated(
      String ruleSet, CamshaftLayout layout, boolean ofMaker, boolean open) {
    LimitTable table =
        TableTexts.limits(LAW.replace("0.040 in,,,,,", "0.040 in,,,,layout.camshaft=tube,"));
    List<MakersLimit> makers = ofMaker ? List.of(makers("", "0.050 in")) : List.of();
    LimitsOfJob limits = new LimitsOfJob(table, DAY, new RuleSet(ruleSet), makers);
    assertThat(limits.isLawOpen(ID, subject(layout))).isEqualTo(open);
  }

  @ParameterizedTest
  @CsvSource({"SPLIT, 0.050 in", "CLOSED, 0.030 in"})
  void a_makers_limit_is_read_as_the_row_of_the_part_or_else_of_the_rule_set(
      CamshaftLayout layout, String row) {
    LimitTable table =
        TableTexts.limits(
            LAW.replace("0.040 in,,,,,", "0.040 in,,,,layout.camshaft=tube,"),
            DEFAULT.replace("in,,,,,", "in,,,,layout.camshaft=tube,"),
            DEFAULT.replace("0.030 in,,,,,", "0.050 in,,,,layout.camshaft=split,"));
    LimitsOfJob limits = new LimitsOfJob(table, DAY, FEDERAL, List.of(makers("", "0.060 in")));
    assertThat(limits.inForce(ID, subject(layout)))
        .singleElement()
        .satisfies(one -> assertThat(one.row().limit().written()).isEqualTo(row));
  }

  @Test
  void a_makers_limit_serves_where_the_table_has_none_for_the_configuration() {
    LimitsOfJob limits =
        new LimitsOfJob(ofTwoLayouts(), DAY, FEDERAL, List.of(makers("", "0.050 in")));
    assertThat(limits.inForce(ID, subject(CamshaftLayout.CLOSED))).hasSize(1);
  }

  @Test
  void a_makers_limit_carries_its_document_and_page() {
    LimitsOfJob limits =
        new LimitsOfJob(TableTexts.limits(DEFAULT), DAY, FEDERAL, List.of(makers("", "0.050 in")));
    LimitInForce limit = limits.inForce(ID, subject(CamshaftLayout.TUBE)).get(0).limit();
    assertThat(limit.source())
        .isEqualTo(new Source("MAKER", "31", "invented manual", Standing.MAKER));
  }

  @Test
  void the_narrower_path_wins_in_either_order() {
    MakersLimit all = makers("", "0.050 in");
    MakersLimit end = makers("axle2/left", "0.040 in");
    MakersLimit part = makers("axle2/left/camshaft", "0.025 in");
    LimitTable table = TableTexts.limits(DEFAULT);
    assertThat(values(table, FEDERAL, all, end, part)).containsExactly("0.025 in");
    assertThat(values(table, FEDERAL, part, end, all)).containsExactly("0.025 in");
    assertThat(values(table, FEDERAL, end, all)).containsExactly("0.04 in");
    assertThat(values(table, FEDERAL, all, end)).containsExactly("0.04 in");
  }

  @ParameterizedTest
  @CsvSource({
    "axle2/right, 0.030 in",
    "axle2/left/camshaft-bushing, 0.030 in",
    "axle2/left/cam, 0.030 in",
    "axle2/left, 0.05 in",
    "axle2/left/camshaft, 0.05 in",
  })
  void a_makers_limit_is_for_its_own_path_alone(String on, String expected) {
    assertThat(values(TableTexts.limits(DEFAULT), FEDERAL, makers(on, "0.050 in")))
        .containsExactly(expected);
  }

  @Test
  void a_makers_limit_of_another_id_leaves_the_default() {
    MakersLimit other =
        new MakersLimit("camshaft.end-play.min", "", Length.parse("0.050 in"), "manual", "");
    assertThat(values(TableTexts.limits(DEFAULT), FEDERAL, other)).containsExactly("0.030 in");
  }

  private static LimitTable ofTwoLayouts() {
    return TableTexts.limits(
        "camshaft.end-play.max,camshaft,endPlay,at most,0.030"
            + " in,,,,layout.camshaft=tube,,,,COMMON-PRACTICE,",
        "camshaft.end-play.max,camshaft,endPlay,at most,0.050"
            + " in,,,,layout.camshaft=split,,,,COMMON-PRACTICE,");
  }

  private static MakersLimit makers(String on, String value) {
    return new MakersLimit(ID, on, Length.parse(value), "invented manual", "31");
  }

  private static List<String> values(LimitTable table, RuleSet ruleSet, MakersLimit... makers) {
    return values(
        new LimitsOfJob(table, DAY, ruleSet, List.of(makers)), subject(CamshaftLayout.TUBE));
  }

  private static List<String> values(
      LimitTable table, LocalDate date, RuleSet ruleSet, CamshaftLayout layout) {
    return values(new LimitsOfJob(table, date, ruleSet, List.of()), subject(layout));
  }

  private static List<String> values(LimitsOfJob limits, Subject subject) {
    return limits.inForce(ID, subject).stream().map(one -> one.limit().written()).toList();
  }

  private static Subject subject(CamshaftLayout layout) {
    return new Subject(
        Optional.empty(),
        AxleKind.DRIVE,
        Layout.of(layout).build(),
        Camshaft.asFound(LEFT).build());
  }
}
