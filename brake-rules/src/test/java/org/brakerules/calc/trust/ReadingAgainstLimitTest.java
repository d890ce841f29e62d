package org.brakerules.calc.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ReadingAgainstLimitTest {

  private static final Source SHEET = new Source("MAKER", "3", "Workshop sheet", Standing.MAKER);

  /**
   * ISO 14253-1, from memory: proven inside up to limit less U, proven beyond from limit plus U.
   */
  @ParameterizedTest(name = "{0} {1} 0.020 in, uncertain by 0.001 in: {2}")
  @CsvSource({
    "0.0189, AT_MOST,   WITHIN",
    "0.0190, AT_MOST,   WITHIN",
    "0.0191, AT_MOST,   UNPROVEN",
    "0.0210, AT_MOST,   UNPROVEN",
    "0.0211, AT_MOST,   BEYOND",
    "0.0190, LESS_THAN, UNPROVEN",
    "0.0189, LESS_THAN, WITHIN",
    "0.0210, LESS_THAN, BEYOND",
    "0.0211, AT_LEAST,  WITHIN",
    "0.0210, AT_LEAST,  WITHIN",
    "0.0209, AT_LEAST,  UNPROVEN",
    "0.0190, AT_LEAST,  UNPROVEN",
    "0.0189, AT_LEAST,  BEYOND",
    "0.0210, MORE_THAN, UNPROVEN",
    "0.0190, MORE_THAN, BEYOND",
  })
  void a_reading_is_proven_only_with_its_uncertainty_against_it(
      String value, Comparison comparison, CheckStatus status) {
    Reading<Length> reading = reading(Length.inches(value)).plusOrMinus(Length.inches("0.001"));
    assertThat(ReadingAgainstLimit.status(reading, comparison, Length.inches("0.020")))
        .isEqualTo(status);
  }

  @Test
  void the_guard_band_never_passes_what_the_reading_alone_fails_and_the_other_way() {
    Random random = new Random(20261125);
    for (int i = 0; i < 5000; i++) {
      Comparison comparison = Comparison.values()[random.nextInt(4)];
      Length limit = thousandths(20);
      Reading<Length> alone = reading(thousandths(random.nextInt(40)));
      CheckStatus guarded =
          ReadingAgainstLimit.status(
              alone.plusOrMinus(thousandths(random.nextInt(5))), comparison, limit);
      CheckStatus simple = ReadingAgainstLimit.status(alone, comparison, limit);
      assertThat(simple).isNotEqualTo(CheckStatus.UNPROVEN);
      assertThat(guarded).isIn(simple, CheckStatus.UNPROVEN);
    }
  }

  @Test
  void a_larger_uncertainty_never_proves_more() {
    Random random = new Random(3);
    for (int i = 0; i < 2000; i++) {
      Comparison comparison = Comparison.values()[random.nextInt(4)];
      Reading<Length> alone = reading(thousandths(random.nextInt(40)));
      int least = random.nextInt(5);
      CheckStatus fine = guarded(alone, comparison, least);
      CheckStatus coarse = guarded(alone, comparison, least + random.nextInt(5));
      assertThat(coarse).isIn(fine, CheckStatus.UNPROVEN);
    }
  }

  @Test
  void the_unit_of_a_reading_never_changes_its_verdict() {
    for (int micrometres = 480; micrometres <= 540; micrometres++) {
      Length metric = new Length(micrometres * 1000L, LengthUnit.MILLIMETRE);
      Length inches = new Length(micrometres * 1000L, LengthUnit.INCH);
      assertThat(ReadingAgainstLimit.status(reading(metric), Comparison.AT_MOST, thousandths(20)))
          .isEqualTo(
              ReadingAgainstLimit.status(reading(inches), Comparison.AT_MOST, thousandths(20)));
    }
  }

  @Test
  void the_work_shows_the_reading_as_it_was_written() {
    Reading<Length> reading =
        new Reading<>(
            Length.parse("5/32 in"),
            "5/32 in",
            Station.SHOE_CENTRE,
            Method.STEEL_RULE,
            Optional.of(Length.parse("1/32 in")),
            Optional.empty(),
            Moment.UNKNOWN);
    assertThat(
            ReadingAgainstLimit.of(
                    "thickness", reading, Comparison.AT_LEAST, Length.parse("1/4 in"), SHEET)
                .working()
                .asText())
        .isEqualTo(
            """
            Margin of the thickness
              given     thickness 5/32 in
              given     limit at least 0.25 in
              given     uncertainty of the reading 0.03125 in
              formula   margin = reading - limit
              work      0.15625 in - 0.25 in = -0.09375 in
              work      at its worst the thickness is 0.125 in
              result    margin -0.09375 in
              result    the reading is beyond the limit
              basis     Workshop sheet, 3 (maker)
            """);
  }

  /** From memory, the table of instruments. */
  @Test
  void a_finer_instrument_is_named_that_would_settle_the_reading() {
    Length value = Length.inches("0.0205");
    Length margin = Length.inches("0.0005");
    List<Method> all = List.of(Method.values());
    assertThat(Instrument.settling(value, margin, all)).isEmpty();
    assertThat(Instrument.settling(value, Length.inches("0.0006"), all))
        .extracting(Instrument::name)
        .containsExactly("micrometer");
    assertThat(Instrument.settling(value, Length.inches("0.003"), List.of(Method.FEELER_GAUGE)))
        .extracting(Instrument::name)
        .containsExactly("feeler gauge");
  }

  @Test
  void an_instrument_has_an_uncertainty_for_what_it_reads_and_for_nothing_else() {
    Instrument wrench = Instrument.of(Method.TORQUE_WRENCH).orElseThrow();
    Instrument protractor = Instrument.of(Method.PROTRACTOR).orElseThrow();
    assertThat(wrench.uncertaintyOf(Torque.parse("100 lbf.in"))).hasValue(Torque.parse("4 lbf.in"));
    assertThat(wrench.uncertaintyOf(Length.parse("1 in"))).isEmpty();
    assertThat(wrench.uncertaintyOf(Share.parse("50 %"))).isEmpty();
    assertThat(protractor.uncertaintyOf(Angle.parse("90 deg"))).hasValue(Angle.parse("1 deg"));
    assertThat(protractor.uncertaintyOf(Pressure.parse("90 psi"))).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(names = {"BY_EYE", "UNKNOWN", "DIAL_INDICATOR_PRIED"})
  void what_no_instrument_of_the_table_reads_has_none(Method method) {
    assertThat(Instrument.of(method)).isEmpty();
  }

  private static CheckStatus guarded(
      Reading<Length> reading, Comparison comparison, int uncertainty) {
    return ReadingAgainstLimit.status(
        reading.plusOrMinus(thousandths(uncertainty)), comparison, thousandths(20));
  }

  private static Length thousandths(int thousandths) {
    return new Length(thousandths * 25_400L, LengthUnit.INCH);
  }

  private static Reading<Length> reading(Length value) {
    return Reading.of(value, Station.WHOLE_PART, Method.DIAL_INDICATOR);
  }
}
