package org.brakerules.internal.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.brakerules.internal.table.LimitTable;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.TableTexts;
import org.brakerules.internal.table.TestPressure;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The readings of a part against its limits. All rows invented. */
class ChecksTest {

  private static final String ID = "camshaft-bushing.radial-play.max";
  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

  private static final TestPressure BAND =
      new TestPressure(Pressure.parse("80 psi"), Pressure.parse("90 psi"));

  /** Its own station, two methods, tube layout only. */
  private static final String PLAY =
      ID
          + ",camshaft-bushing,radialPlay,at most,0.020 in,,dial-indicator;bore-less-journal,,"
          + "layout.camshaft=tube,,,,COMMON-PRACTICE,";

  private static final String PLAY_BY_LAW =
      ID
          + ",camshaft-bushing,radialPlay,at most,0.030 in,,dial-indicator,,,quebec,,,"
          + "QUEBEC-C-24.2-R-32#1,";

  @ParameterizedTest
  @CsvSource({
    "0.020 in, HEAD_END,   DIAL_INDICATOR,       WITHIN",
    "0.021 in, HEAD_END,   DIAL_INDICATOR,       BEYOND",
    "0.021 in, HEAD_END,   BORE_LESS_JOURNAL,    BEYOND",
    "0.012 in, SPLINE_END, DIAL_INDICATOR,       WRONG_METHOD",
    "0.040 in, SPLINE_END, DIAL_INDICATOR,       WRONG_METHOD",
    "0.012 in, TUBE,       DIAL_INDICATOR,       WRONG_METHOD",
    "0.012 in, UNKNOWN,    DIAL_INDICATOR,       WRONG_METHOD",
    "0.012 in, HEAD_END,   DIAL_INDICATOR_PRIED, WRONG_METHOD",
    "0.040 in, HEAD_END,   DIAL_INDICATOR_PRIED, WRONG_METHOD",
    "0.012 in, HEAD_END,   BY_EYE,               WRONG_METHOD",
    "0.012 in, HEAD_END,   UNKNOWN,              WRONG_METHOD",
  })
  void a_reading_counts_at_its_station_by_its_method_only(
      String value, Station station, Method method, CheckStatus expected) {
    assertThat(status(Measurement.of(Length.parse(value), station, method))).isEqualTo(expected);
  }

  @Test
  void no_reading_is_missing_and_has_no_margin() {
    Check check = only(Measurement.notTaken());
    assertThat(check.status()).isEqualTo(CheckStatus.MISSING);
    assertThat(check.reading()).isEmpty();
    assertThat(check.margin()).isEmpty();
    assertThat(check.limit()).isPresent();
  }

  @ParameterizedTest
  @CsvSource({
    "0.012 in, 0.023 in, 0.021 in, BEYOND, 0.023 in, 0.003 in",
    "0.023 in, 0.021 in, 0.012 in, BEYOND, 0.023 in, 0.003 in",
    "0.012 in, 0.018 in, 0.015 in, WITHIN, 0.018 in, 0.002 in",
    "0.020 in, 0.012 in, 0.001 in, WITHIN, 0.020 in, 0 in",
  })
  void of_several_readings_the_worst_decides(
      String first,
      String second,
      String third,
      CheckStatus expected,
      String worst,
      String margin) {
    Check check = only(atHead(first).and(reading(second)).and(reading(third)));
    assertThat(check.status()).isEqualTo(expected);
    assertThat(check.reading().orElseThrow().value()).isEqualTo(Length.parse(worst));
    assertThat(check.margin()).hasValue(Length.parse(margin));
  }

  @Test
  void a_good_reading_does_not_cover_one_too_close_to_the_limit() {
    Measurement<Length> both =
        atHead("0.010 in").and(reading("0.020 in").plusOrMinus(Length.parse("0.001 in")));
    assertThat(status(both)).isEqualTo(CheckStatus.UNPROVEN);
  }

  @Test
  void a_reading_that_does_not_count_neither_saves_nor_condemns() {
    Reading<Length> pried =
        Reading.of(Length.parse("0.040 in"), Station.HEAD_END, Method.DIAL_INDICATOR_PRIED);
    assertThat(status(atHead("0.012 in").and(pried))).isEqualTo(CheckStatus.WITHIN);
    assertThat(status(atHead("0.021 in").and(pried))).isEqualTo(CheckStatus.BEYOND);
  }

  @Test
  void a_station_named_by_the_limit_outranks_the_parts_own() {
    LimitTable table = TableTexts.limits(PLAY.replace("0.020 in,,dial", "0.020 in,tube,dial"));
    Measurement<Length> own = atHead("0.012 in");
    Measurement<Length> named =
        Measurement.of(Length.parse("0.012 in"), Station.TUBE, Method.DIAL_INDICATOR);
    assertThat(checks(table, "us-federal", CamshaftLayout.TUBE, own).get(0).status())
        .isEqualTo(CheckStatus.WRONG_METHOD);
    assertThat(checks(table, "us-federal", CamshaftLayout.TUBE, named).get(0).status())
        .isEqualTo(CheckStatus.WITHIN);
  }

  @ParameterizedTest
  @CsvSource({"UNKNOWN, layout.camshaft", "SPLIT, ''"})
  void a_limit_that_cannot_be_chosen_is_no_limit_and_says_what_is_unstated(
      CamshaftLayout layout, String unstated) {
    LimitTable table = TableTexts.limits(PLAY);
    List<Check> checks = checks(table, "us-federal", layout, atHead("0.001 in"));
    assertThat(checks).hasSize(1);
    assertThat(checks.get(0).status()).isEqualTo(CheckStatus.NO_LIMIT);
    assertThat(checks.get(0).limit()).isEmpty();
    assertThat(checks.get(0).reading().orElseThrow().written()).isEqualTo("0.001 in");
    assertThat(
            String.join(
                ";",
                new Checks(
                        table,
                        limits(table, "us-federal"),
                        Optional.empty(),
                        Acceptance.GUARDED_IF_STATED)
                    .unstated(ID, subject(layout, atHead("0.001 in")))))
        .isEqualTo(unstated);
  }

  @ParameterizedTest
  @CsvSource({
    "0.030 in, 0.020 in, BEYOND",
    "0.025 in, 0.020 in, BEYOND",
    "0.020 in, 0.020 in, WITHIN",
    "0.031 in, 0.020 in, BEYOND",
  })
  void beside_a_law_the_makers_limit_is_checked_as_well(
      String value, String makers, CheckStatus byMaker) {
    LimitTable table = TableTexts.limits(PLAY_BY_LAW);
    List<Check> checks =
        checks(table, "quebec", CamshaftLayout.TUBE, atHead(value), makers(makers));
    assertThat(checks).hasSize(2);
    assertThat(checks)
        .extracting(check -> check.limit().orElseThrow().written())
        .containsExactly("0.030 in", Length.parse(makers).toString());
    assertThat(checks.get(0).status())
        .isEqualTo(value.equals("0.031 in") ? CheckStatus.BEYOND : CheckStatus.WITHIN);
    assertThat(checks.get(1).status()).isEqualTo(byMaker);
  }

  @Test
  void a_generous_maker_does_not_relax_a_law() {
    List<Check> checks =
        checks(
            TableTexts.limits(PLAY_BY_LAW),
            "quebec",
            CamshaftLayout.TUBE,
            atHead("0.031 in"),
            makers("0.050 in"));
    assertThat(checks)
        .extracting(Check::status)
        .containsExactly(CheckStatus.BEYOND, CheckStatus.WITHIN);
  }

  @ParameterizedTest
  @CsvSource({
    "as-found,   AS_FOUND,   WITHIN",
    "as-found,   AFTER_WORK, WRONG_METHOD",
    "as-found,   UNKNOWN,    WRONG_METHOD",
    "after-work, AFTER_WORK, WITHIN",
    "after-work, AS_FOUND,   WRONG_METHOD",
    "'',         AS_FOUND,   WITHIN",
    "'',         UNKNOWN,    WITHIN",
  })
  void a_reading_counts_at_the_moment_its_limit_asks_for(
      String wanted, Moment taken, CheckStatus expected) {
    LimitTable table = TableTexts.limits(PLAY.replace(",,layout", "," + wanted + ",layout"));
    Measurement<Length> play = Measurement.of(reading("0.012 in").taken(taken));
    assertThat(checks(table, "us-federal", CamshaftLayout.TUBE, play).get(0).status())
        .isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "full-application, 85 psi, WITHIN",
    "full-application, 91 psi, WRONG_METHOD",
    "full-application, '',     WRONG_METHOD",
    "dial-indicator,   91 psi, WITHIN",
    "dial-indicator,   '',     WITHIN",
  })
  void only_a_reading_at_a_full_application_needs_its_pressure(
      String method, String pressure, CheckStatus expected) {
    LimitTable table = TableTexts.limits(PLAY.replace("bore-less-journal", "full-application"));
    Reading<Length> bare =
        Reading.of(Length.parse("0.012 in"), Station.HEAD_END, Method.byId(method).orElseThrow());
    Reading<Length> play =
        pressure.isEmpty() ? bare : bare.atReservoirPressure(Pressure.parse(pressure));
    Checks checks =
        new Checks(
            table, limits(table, "us-federal"), Optional.of(BAND), Acceptance.GUARDED_IF_STATED);
    assertThat(checks.of(subject(CamshaftLayout.TUBE, Measurement.of(play))).get(0).status())
        .isEqualTo(expected);
  }

  @Test
  void what_a_reading_must_be_taken_under_is_said_in_words() {
    LimitTable table =
        TableTexts.limits(
            PLAY.replace("bore-less-journal,", "full-application,as-found"),
            PLAY_BY_LAW
                .replace(ID, ID + ".after")
                .replace("indicator,,,", "indicator,after-work,,"));
    Checks checks =
        new Checks(table, limits(table, "quebec"), Optional.of(BAND), Acceptance.GUARDED_IF_STATED);
    assertThat(checks.conditions(table.first(ID).orElseThrow()))
        .containsExactly(
            "before anything is pumped, turned or taken apart",
            "at a reservoir pressure from 80 psi to 90 psi");
    assertThat(checks.conditions(table.first(ID + ".after").orElseThrow()))
        .containsExactly("after the work");
    assertThat(
            new Checks(
                    table, limits(table, "quebec"), Optional.empty(), Acceptance.GUARDED_IF_STATED)
                .conditions(table.first(ID).orElseThrow()))
        .containsExactly("before anything is pumped, turned or taken apart");
  }

  private static CheckStatus status(Measurement<Length> play) {
    return only(play).status();
  }

  private static Check only(Measurement<Length> play) {
    List<Check> checks = checks(TableTexts.limits(PLAY), "us-federal", CamshaftLayout.TUBE, play);
    assertThat(checks).hasSize(1);
    return checks.get(0);
  }

  private static List<Check> checks(
      LimitTable table,
      String ruleSet,
      CamshaftLayout layout,
      Measurement<Length> play,
      MakersLimit... makers) {
    return new Checks(
            table, limits(table, ruleSet, makers), Optional.empty(), Acceptance.GUARDED_IF_STATED)
        .of(subject(layout, play));
  }

  private static LimitsOfJob limits(LimitTable table, String ruleSet, MakersLimit... makers) {
    return new LimitsOfJob(table, DAY, new RuleSet(ruleSet), List.of(makers));
  }

  private static Subject subject(CamshaftLayout layout, Measurement<Length> play) {
    return new Subject(
        Optional.empty(),
        AxleKind.DRIVE,
        Layout.of(layout).build(),
        CamshaftBushing.asFound(LEFT, Station.HEAD_END).radialPlay(play).build());
  }

  private static MakersLimit makers(String value) {
    return new MakersLimit(ID, "", Length.parse(value), "invented manual", "31");
  }

  private static Measurement<Length> atHead(String value) {
    return Measurement.of(reading(value));
  }

  private static Reading<Length> reading(String value) {
    return Reading.of(Length.parse(value), Station.HEAD_END, Method.DIAL_INDICATOR);
  }
}
