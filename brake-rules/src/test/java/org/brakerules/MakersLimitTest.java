package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence.Measured;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a limit of the maker does: alone, beside a default and beside a law. All values invented.
 */
class MakersLimitTest {

  private static final String STROKE = "chamber.applied-stroke.max";
  private static final String SHOE = "shoe/upper";
  private static final String ANGLE = "push-rod.angle-applied.max";

  @Test
  void where_no_default_is_known_a_needed_reading_is_undecided_without_the_maker() {
    SoundBrake brake = SoundBrake.tube();
    assertThat(brake.disposition(SHOE)).isEqualTo(Disposition.REUSE);
    Decision alone = brake.withoutMakersLimits().decision(SHOE);
    assertThat(alone.disposition()).isEqualTo(Disposition.UNDECIDED);
    assertThat(alone.needed())
        .filteredOn(needed -> needed.point().equals("shoe.span"))
        .singleElement()
        .satisfies(
            needed ->
                assertThat(needed.why())
                    .isEqualTo(
                        "no limit is known for this part; supply the maker's as shoe.span.min; "
                            + "no limit is known for this part; supply the maker's as"
                            + " shoe.span.max"));
  }

  @Test
  void a_reading_that_only_a_makers_limit_asks_for_is_not_needed_without_it() {
    SoundBrake brake = SoundBrake.tube().notMeasured("push-rod", "angleApplied");
    assertThat(brake.disposition("push-rod")).isEqualTo(Disposition.REUSE);
    assertThat(brake.makersLimit(ANGLE, "95 deg").disposition("push-rod"))
        .isEqualTo(Disposition.UNDECIDED);
  }

  @ParameterizedTest(name = "{0} against the maker's 95 deg: beyond {1}")
  @CsvSource({"94 deg, false", "95 deg, false", "96 deg, true"})
  void where_no_default_is_known_the_maker_decides(String angle, boolean beyond) {
    Decision rod = angle(angle, SoundBrake.tube().makersLimit(ANGLE, "95 deg"));
    assertThat(failed(rod, ANGLE)).isEqualTo(beyond);
    assertThat(rod.passed()).hasSize(beyond ? 0 : 1);
    assertThat(rod.disposition()).isEqualTo(beyond ? Disposition.ADJUST : Disposition.REUSE);
  }

  @Test
  void a_reading_without_any_limit_is_told_as_measured_and_judged_by_nobody() {
    Decision rod = angle("96 deg", SoundBrake.tube());
    assertThat(rod.disposition()).isEqualTo(Disposition.REUSE);
    assertThat(rod.passed()).isEmpty();
    assertThat(rod.withoutLimit())
        .singleElement()
        .satisfies(
            check -> {
              assertThat(check.limitId()).isEqualTo(ANGLE);
              assertThat(check.status()).isEqualTo(CheckStatus.NO_LIMIT);
              assertThat(check.reading().orElseThrow().written()).isEqualTo("96 deg");
            });
    assertThat(angle("94 deg", SoundBrake.tube().makersLimit(ANGLE, "95 deg")).withoutLimit())
        .isEmpty();
    assertThat(
            SoundBrake.tube()
                .notMeasured("push-rod", "angleApplied")
                .decision("push-rod")
                .withoutLimit())
        .isEmpty();
  }

  /** A law holds beside the maker's figure only in the rule set whose law it is. */
  @ParameterizedTest(name = "{0}, maker {1}, stroke {2}: beyond {3}")
  @CsvSource({
    "us-federal, 2.25 in, 2.00 in, false",
    "us-federal, 2.25 in, 2.10 in, true",
    "us-federal, 1.90 in, 1.90 in, false",
    "us-federal, 1.90 in, 1.95 in, true",
    "quebec,     2.25 in, 2.10 in, false",
    "quebec,     2.25 in, 2.25 in, false",
    "quebec,     2.25 in, 2.26 in, true",
    "quebec,     1.90 in, 1.95 in, true",
  })
  void the_stricter_of_law_and_maker_decides_and_a_foreign_law_gives_way(
      String ruleSet, String makers, String stroke, boolean beyond) {
    String pressure = ruleSet.equals("quebec") ? "95 psi" : "85 psi";
    Decision chamber =
        SoundBrake.tube()
            .ruleSet(ruleSet)
            .makersLimit(STROKE, makers)
            .stroke(stroke, pressure)
            .decision("chamber");
    assertThat(failed(chamber, STROKE)).isEqualTo(beyond);
  }

  @Test
  void without_a_maker_the_foreign_law_serves_as_a_default() {
    SoundBrake quebec = SoundBrake.tube().ruleSet("quebec");
    assertThat(failed(quebec.stroke("2.00 in", "95 psi").decision("chamber"), STROKE)).isFalse();
    assertThat(failed(quebec.stroke("2.01 in", "95 psi").decision("chamber"), STROKE)).isTrue();
  }

  @ParameterizedTest(name = "{0}, {1}: {2}")
  @CsvSource({
    "us-federal, SHOE_CENTRE,    REPLACE",
    "us-federal, THINNEST_POINT, UNDECIDED",
    "quebec,     SHOE_CENTRE,    UNDECIDED",
    "quebec,     THINNEST_POINT, REPLACE",
  })
  void a_makers_limit_is_read_where_the_rule_set_reads_its_own(
      String ruleSet, Station station, Disposition expected) {
    assertThat(lining(ruleSet, "9.9 mm", station)).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0} at the thinnest point, maker 10 mm, law 8 mm: {1}")
  @CsvSource({"10 mm, REUSE", "9.9 mm, REPLACE"})
  void a_makers_limit_above_the_law_condemns_in_quebec_too(String value, Disposition expected) {
    assertThat(lining("quebec", value, Station.THINNEST_POINT)).isEqualTo(expected);
  }

  private static Disposition lining(String ruleSet, String value, Station station) {
    return SoundBrake.tube()
        .ruleSet(ruleSet)
        .makersLimit("lining.thickness.min", "10 mm")
        .measured("lining/upper", "thickness", value, station, Method.CALIPER)
        .disposition("lining/upper");
  }

  @Test
  void a_makers_limit_does_not_settle_what_the_law_rests_on() {
    ChamberSize unmarked =
        new ChamberSize(ChamberFamily.CLAMP, "", StrokeClass.LONG, Optional.empty(), "");
    SoundBrake brake = SoundBrake.tube().layout("chamber", unmarked).makersLimit(STROKE, "2 in");
    Decision chamber = brake.stroke("1.5 in", "85 psi").decision("chamber");
    assertThat(chamber.disposition()).isEqualTo(Disposition.UNDECIDED);
    assertThat(chamber.needed())
        .extracting(Needed::why)
        .containsExactly(
            "the limit depends on layout.chamber.type and layout.chamber.ratedStroke,"
                + " which is not stated");
  }

  private static Decision angle(String angle, SoundBrake brake) {
    return brake
        .measured("push-rod", "angleApplied", angle, Station.WHOLE_PART, Method.PROTRACTOR)
        .decision("push-rod");
  }

  private static boolean failed(Decision decision, String limit) {
    return decision.reasons().stream()
        .flatMap(reason -> reason.evidence().stream())
        .anyMatch(one -> one instanceof Measured m && m.check().limitId().equals(limit));
  }
}
