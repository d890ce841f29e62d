package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An applied stroke counts only at the reservoir pressure that the job's rule set asks for. */
class TestPressureOfRuleSetTest {

  private static final String POINT = "chamber.applied-stroke";
  private static final String LIMIT = "chamber.applied-stroke.max";

  @ParameterizedTest(name = "{0}, {1}: counts {2}")
  @DisplayName(
      "80 to 90 psi: 49 CFR 396 App A 1.a(5)(a), verified; 90 to 100 psi: handbook, government")
  @CsvSource({
    "us-federal, 79.9 psi,   false",
    "us-federal, 80 psi,     true",
    "us-federal, 85 psi,     true",
    "us-federal, 90 psi,     true",
    "us-federal, 90.1 psi,   false",
    "us-federal, 100 psi,    false",
    "us-federal, 600 kPa,    true",
    "us-federal, 690 kPa,    false",
    "us-virginia, 60 psi,    true",
    "quebec,     85 psi,     false",
    "quebec,     89.9 psi,   false",
    "quebec,     90 psi,     true",
    "quebec,     100 psi,    true",
    "quebec,     100.1 psi,  false",
  })
  void a_stroke_counts_inside_the_band_both_ends_included(
      String ruleSet, String pressure, boolean counts) {
    for (String stroke : new String[] {"1.5 in", "2.4 in"}) {
      Decision chamber =
          SoundBrake.tube().ruleSet(ruleSet).stroke(stroke, pressure).decision("chamber");
      assertThat(chamber.needed().stream().anyMatch(TestPressureOfRuleSetTest::isWrongReading))
          .as(stroke)
          .isEqualTo(!counts);
    }
  }

  @Test
  void a_short_stroke_at_a_high_pressure_proves_nothing() {
    Decision chamber = SoundBrake.tube().stroke("1 in", "100 psi").decision("chamber");
    assertThat(chamber.disposition()).isEqualTo(Disposition.UNDECIDED);
    assertThat(chamber.passed()).extracting(Check::limitId).doesNotContain(LIMIT);
  }

  @ParameterizedTest
  @CsvSource({
    "us-federal, 100 psi, at a reservoir pressure from 80 psi to 90 psi",
    "quebec,     85 psi,  at a reservoir pressure from 90 psi to 100 psi",
  })
  void the_right_pressure_is_named(String ruleSet, String pressure, String condition) {
    Needed needed =
        stroke(SoundBrake.tube().ruleSet(ruleSet).stroke("1.5 in", pressure).decision("chamber"));
    assertThat(needed.conditions()).containsExactly(condition);
    assertThat(needed.why())
        .isEqualTo(
            "measured as 1.5 in by full application at a reservoir pressure of "
                + pressure
                + ", which is no reading of this limit");
  }

  @Test
  void a_pressure_that_is_not_stated_is_said_to_be_missing() {
    Decision chamber =
        SoundBrake.tube()
            .measured(
                "chamber", "appliedStroke", "1.5 in", Station.WHOLE_PART, Method.FULL_APPLICATION)
            .decision("chamber");
    assertThat(chamber.disposition()).isEqualTo(Disposition.UNDECIDED);
    assertThat(stroke(chamber).why())
        .isEqualTo(
            "measured as 1.5 in by full application at a reservoir pressure not stated, which is no"
                + " reading of this limit");
  }

  @Test
  void the_inspection_points_name_the_pressure_before_anything_is_measured() {
    SoundBrake brake = SoundBrake.tube();
    assertThat(
            BrakeRules.standard()
                .inspectionPoints(
                    brake.job().wheelEnds().findFirst().orElseThrow().layout(),
                    brake.job().scope(),
                    brake.job().date(),
                    brake.job().ruleSet()))
        .filteredOn(point -> point.id().equals(POINT))
        .singleElement()
        .satisfies(
            point ->
                assertThat(point.conditions())
                    .containsExactly("at a reservoir pressure from 80 psi to 90 psi"));
  }

  private static boolean isWrongReading(Needed needed) {
    return needed.point().equals(POINT) && needed.why().contains("no reading of this limit");
  }

  private static Needed stroke(Decision chamber) {
    return chamber.needed().stream()
        .filter(needed -> needed.point().equals(POINT))
        .findFirst()
        .orElseThrow();
  }
}
