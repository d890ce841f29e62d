package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence.Measured;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The applied strokes of the federal table, held against its own text: 49 CFR 393.47(e)(1), read in
 * the section text to 77 FR 46638 and to 86 FR 57076, verified. The table stands in {@code
 * applied-stroke-limits.csv}; a rated stroke is written where the law asks for it.
 */
class StrokeTableTest {

  private static final String TABLE = "/org/brakerules/applied-stroke-limits.csv";
  private static final String LIMIT = "chamber.applied-stroke.max";
  private static final String IN_BAND = "85 psi";
  private static final LocalDate USUAL = LocalDate.of(2026, 11, 20);

  /** Two decimals of a millimetre hold every sixteenth of an inch of the table. */
  private static final BigDecimal MM = new BigDecimal("25.4");

  @ParameterizedTest(name = "{0} {1} {2} {3}: {4} in, from {6} to {7}")
  @CsvFileSource(resources = TABLE, numLinesToSkip = 1)
  void a_stroke_may_equal_the_limit_of_its_chamber_and_not_be_greater(
      String family,
      String type,
      String strokeClass,
      @Nullable String ratedStroke,
      BigDecimal limitIn,
      BigDecimal limitMm,
      @Nullable LocalDate from,
      @Nullable LocalDate to) {
    SoundBrake brake = chamber(size(family, type, strokeClass, ratedStroke)).on(day(from, to));
    BigDecimal limit = limitIn.multiply(MM).stripTrailingZeros();

    passes(brake, limitIn.toPlainString() + " in");
    fails(brake, limitIn.add(new BigDecimal("0.001")).toPlainString() + " in");
    passes(brake, limit.toPlainString() + " mm");
    fails(brake, limit.add(new BigDecimal("0.1")).toPlainString() + " mm");
  }

  @ParameterizedTest(name = "{0} {1} {2}: {4} in, printed {5} mm")
  @CsvFileSource(resources = TABLE, numLinesToSkip = 1)
  void the_printed_millimetres_agree_with_the_inches_to_0_05_mm(
      String family,
      String type,
      String strokeClass,
      @Nullable String ratedStroke,
      BigDecimal limitIn,
      BigDecimal limitMm) {
    assertThat(limitIn.multiply(MM).subtract(limitMm).abs())
        .isLessThanOrEqualTo(new BigDecimal("0.05"));
  }

  @Test
  void the_limit_table_has_the_32_rows_of_the_law_and_one_for_every_other_type() {
    List<Limit> rows =
        Tables.load().limits().rows(LIMIT).stream()
            .map(row -> row.limit())
            .filter(limit -> limit.ruleSet().isEmpty())
            .toList();
    assertThat(rows).filteredOn(row -> row.source().clause().equals("(e)(1)")).hasSize(32);
    assertThat(rows).filteredOn(row -> row.appliesTo().equals("otherwise")).hasSize(1);
    assertThat(rows).hasSize(33);
  }

  /** The day on which the amended text takes effect was not read; it is that of publication. */
  @ParameterizedTest(name = "2.40 in on {0}: over the limit {1}")
  @DisplayName("Check case C20: clamp type 36 in both texts; 49 CFR 393.47(e), verified")
  @CsvSource({
    "2012-08-06, true",
    "2021-10-13, true",
    "2021-10-14, false",
    "2021-10-15, false",
  })
  void the_text_in_force_on_the_day_decides(LocalDate day, boolean over) {
    SoundBrake brake =
        chamber(size("clamp", "36", "standard", null))
            .builtOn(Optional.of(LocalDate.of(2011, 3, 1)))
            .on(day);
    assertThat(isOver(brake, "2.40 in")).isEqualTo(over);
  }

  @ParameterizedTest(name = "{0} {1} {2} rated {3}, {4}: over the limit {5}")
  @DisplayName("Check cases C05 and C21 to C25; 49 CFR 393.47(e)(1) with its notes, verified")
  @CsvSource({
    // C05: the stroke must not be greater than the limit
    "clamp,          30, standard, 2.5 in,  2.000 in, false",
    "clamp,          30, standard, 2.5 in,  2.001 in, true",
    // C21 and C22: rated for 3 in or not
    "clamp,          20, long,     3 in,    2.40 in,  false",
    "clamp,          20, long,     2.5 in,  2.40 in,  true",
    "clamp,          20, long,     76.2 mm, 2.40 in,  false",
    "clamp,          20, long,     76.1 mm, 2.40 in,  true",
    "clamp,          24, long,     3 in,    2.01 in,  false",
    "clamp,          24, long,     2.5 in,  2.01 in,  true",
    // C23: both print a diameter of 206 mm
    "clamp,          30, standard, 2.5 in,  2.20 in,  true",
    "dual-diaphragm, 30, standard, 2.5 in,  2.20 in,  false",
    // C24: both have a diameter of 5 1/4 in
    "clamp,          9,  standard, 2 in,    1.30 in,  false",
    "bolt,           D,  standard, 2 in,    1.30 in,  true",
    // C25: between 1 3/4 in and the 44.5 mm printed beside it
    "clamp,          16, standard, 2.25 in, 44.45 mm, false",
    "clamp,          16, standard, 2.25 in, 44.47 mm, true",
  })
  void family_type_class_and_rated_stroke_choose_the_limit(
      String family,
      String type,
      String strokeClass,
      String ratedStroke,
      String stroke,
      boolean over) {
    SoundBrake brake = chamber(size(family, type, strokeClass, ratedStroke));
    assertThat(isOver(brake, stroke)).isEqualTo(over);
  }

  @ParameterizedTest(name = "rated {0}, stroke {1}: over the limit {2}")
  @DisplayName("Check case C27: 80 % of the marked stroke; 49 CFR 393.47(e)(2), verified")
  @CsvSource({
    "2.25 in, 1.80 in,         false",
    "2.25 in, 1.801 in,        true",
    "2.25 in, 45.72 mm,        false",
    "2.25 in, 45.73 mm,        true",
    "2.5 in,  2.00 in,         false",
    "2.5 in,  2.001 in,        true",
    "64 mm,   51.2 mm,         false",
    "64 mm,   51.200001 mm,    true",
  })
  void a_type_the_table_does_not_list_has_four_fifths_of_its_marked_stroke(
      String ratedStroke, String stroke, boolean over) {
    SoundBrake brake = chamber(size("clamp", "7", "standard", ratedStroke));
    assertThat(isOver(brake, stroke)).isEqualTo(over);
  }

  @ParameterizedTest(name = "{0} {1} {2} rated {3}: asks for {4}")
  @CsvSource({
    "unknown, 30, standard, 2.5 in, layout.chamber.family",
    "clamp,   '', standard, 2.5 in, layout.chamber.type",
    "clamp,   30, unknown,  2.5 in, layout.chamber.strokeClass",
    "clamp,   20, long,     '',     layout.chamber.ratedStroke",
    "clamp,   7,  standard, '',     layout.chamber.ratedStroke",
  })
  void no_limit_is_chosen_while_what_it_hangs_on_is_not_stated(
      String family, String type, String strokeClass, String ratedStroke, String asked) {
    SoundBrake brake = chamber(size(family, type, strokeClass, ratedStroke));
    Decision chamber = brake.stroke("1 in", IN_BAND).decision("chamber");
    assertThat(chamber.disposition()).isEqualTo(Disposition.UNDECIDED);
    assertThat(chamber.needed())
        .filteredOn(needed -> needed.point().equals("chamber.applied-stroke"))
        .singleElement()
        .satisfies(needed -> assertThat(needed.why()).contains(asked));
  }

  private static SoundBrake chamber(ChamberSize size) {
    return SoundBrake.tube().layout("chamber", size);
  }

  private static ChamberSize size(
      String family, String type, String strokeClass, @Nullable String ratedStroke) {
    return new ChamberSize(
        ChamberFamily.valueOf(family.toUpperCase(Locale.ROOT).replace('-', '_')),
        type,
        StrokeClass.valueOf(strokeClass.toUpperCase(Locale.ROOT)),
        Optional.ofNullable(ratedStroke).filter(text -> !text.isEmpty()).map(Length::parse),
        "30");
  }

  private static LocalDate day(@Nullable LocalDate from, @Nullable LocalDate to) {
    return Optional.ofNullable(to).or(() -> Optional.ofNullable(from)).orElse(USUAL);
  }

  private static void passes(SoundBrake brake, String stroke) {
    Decision chamber = brake.stroke(stroke, IN_BAND).decision("chamber");
    assertThat(chamber.passed()).as(stroke).extracting(Check::limitId).contains(LIMIT);
    assertThat(chamber.disposition()).as(stroke).isEqualTo(Disposition.REUSE);
    assertThat(chamber.road()).as(stroke).isEqualTo(RoadAnswer.MET);
  }

  private static void fails(SoundBrake brake, String stroke) {
    assertThat(isOver(brake, stroke)).as(stroke).isTrue();
    Decision chamber = brake.stroke(stroke, IN_BAND).decision("chamber");
    assertThat(chamber.disposition()).as(stroke).isEqualTo(Disposition.UNDECIDED);
    assertThat(chamber.road()).as(stroke).isEqualTo(RoadAnswer.FAILED);
  }

  /** Over its limit or within it, and never neither. */
  private static boolean isOver(SoundBrake brake, String stroke) {
    Decision chamber = brake.stroke(stroke, IN_BAND).decision("chamber");
    boolean over =
        chamber.reasons().stream()
            .flatMap(reason -> reason.evidence().stream())
            .anyMatch(one -> one instanceof Measured m && m.check().limitId().equals(LIMIT));
    boolean within = chamber.passed().stream().anyMatch(one -> one.limitId().equals(LIMIT));
    assertThat(within).as("%s is within", stroke).isNotEqualTo(over);
    return over;
  }
}
