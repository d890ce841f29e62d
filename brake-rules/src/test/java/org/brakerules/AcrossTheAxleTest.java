package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.part.Sign;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one end of an axle means for the other. */
class AcrossTheAxleTest {

  private static final List<String> LEFT = List.of("lining/upper", "lining/lower");
  private static final List<String> RIGHT = List.of("right/lining/upper", "right/lining/lower");

  @Test
  void two_sound_ends_leave_each_other_alone() {
    SoundBrake axle = SoundBrake.tube().withPartner();
    for (String lining : List.of("lining/upper", "right/lining/lower")) {
      assertThat(axle.disposition(lining)).as(lining).isEqualTo(Disposition.REUSE);
    }
  }

  @ParameterizedTest
  @DisplayName("Linings of an axle go together: common practice, no source")
  @CsvSource({"lining/upper", "lining/lower", "right/lining/upper", "right/lining/lower"})
  void one_broken_lining_replaces_the_linings_of_both_ends(String broken) {
    SoundBrake axle = SoundBrake.tube().withPartner().with(broken, "broken", Sign.SEEN);
    for (String lining : LEFT) {
      assertThat(axle.disposition(lining)).as(lining).isEqualTo(Disposition.REPLACE);
    }
    for (String lining : RIGHT) {
      assertThat(axle.disposition(lining)).as(lining).isEqualTo(Disposition.REPLACE);
    }
  }

  /** The right end is replaced because of the left, which is no reason for the left. */
  @Test
  void an_end_pulled_along_never_pulls_back() {
    SoundBrake axle = SoundBrake.tube().withPartner().with("lining/upper", "broken", Sign.SEEN);
    assertThat(causes(axle.decision("lining/upper")))
        .noneMatch(cause -> cause.wheelEnd().equals(axle.decision(RIGHT.get(0)).part().wheelEnd()));
    assertThat(causes(axle.decision("right/lining/upper")))
        .anyMatch(cause -> cause.wheelEnd().equals(axle.decision(LEFT.get(0)).part().wheelEnd()));
  }

  @Test
  void an_end_that_is_not_in_the_job_gets_no_decision() {
    SoundBrake alone = SoundBrake.tube().with("lining/upper", "broken", Sign.SEEN);
    assertThat(alone.decide().decisions())
        .allSatisfy(one -> assertThat(one.part().wheelEnd()).hasToString("axle2/left"));
  }

  @ParameterizedTest(name = "{0} {1} {2} beside clamp 30 standard: rules {3}")
  @DisplayName("Chambers of an axle are alike: 49 CFR 393.47(b), verified; stroke class: no source")
  @CsvSource({
    "CLAMP,   30, STANDARD, ''",
    "CLAMP,   24, STANDARD, CHAMBER-190",
    "BOLT,    30, STANDARD, CHAMBER-190",
    "CLAMP,   30, LONG,     CHAMBER-210",
    // what is not stated differs from nothing
    "UNKNOWN, 24, STANDARD, ''",
    "CLAMP,   '', STANDARD, ''",
    "CLAMP,   30, UNKNOWN,  ''",
  })
  void chambers_that_differ_are_said_to_at_both_ends(
      ChamberFamily family, String type, StrokeClass strokeClass, String rule) {
    ChamberSize across =
        new ChamberSize(family, type, strokeClass, Optional.of(Length.parse("2.5 in")), "30");
    SoundBrake axle = SoundBrake.tube().withPartner().layoutAcross("chamber", across);
    for (String chamber : List.of("chamber", "right/chamber")) {
      assertThat(unlike(axle.decision(chamber)))
          .as(chamber)
          .isEqualTo(rule.isEmpty() ? List.of() : List.of(rule));
    }
  }

  @ParameterizedTest(name = "{0} beside a clutch: rules {1}")
  @CsvSource({
    "AUTOMATIC_CLUTCH, ''",
    "AUTOMATIC_PAWL,   SLACK-ADJUSTER-040",
    "UNKNOWN,          ''",
  })
  void adjusters_of_two_kinds_are_said_to_be_at_both_ends(AdjusterKind across, String rule) {
    SoundBrake axle = SoundBrake.tube().withPartner().layoutAcross("adjuster", across);
    for (String adjuster : List.of("slack-adjuster", "right/slack-adjuster")) {
      assertThat(unlike(axle.asFound(adjuster).decision(adjuster)))
          .as(adjuster)
          .isEqualTo(rule.isEmpty() ? List.of() : List.of(rule));
    }
  }

  @ParameterizedTest(name = "arms of 5.5 in and {0}: rules {1}")
  @DisplayName("Arms of an axle are of one length: 49 CFR 393.47(c), verified")
  @CsvSource({"5.5 in, ''", "139.7 mm, ''", "6 in, SLACK-ADJUSTER-060"})
  void arms_of_two_lengths_are_said_to_be_at_both_ends(String across, String rule) {
    SoundBrake axle =
        arm(
            arm(SoundBrake.tube().withPartner(), "slack-adjuster", "5.5 in"),
            "right/slack-adjuster",
            across);
    for (String adjuster : List.of("slack-adjuster", "right/slack-adjuster")) {
      assertThat(unlike(axle.decision(adjuster)))
          .as(adjuster)
          .isEqualTo(rule.isEmpty() ? List.of() : List.of(rule));
    }
  }

  /** The Canadian day is secondary, not read in the standard itself. */
  @ParameterizedTest(name = "{0}, built {1}: replace {2}")
  @DisplayName("Automatic adjusters from 1994-10-20: 49 CFR 393.53, verified")
  @CsvSource({
    "us-federal, 1994-10-19, false",
    "us-federal, 1994-10-20, true",
    "us-federal, 1994-10-21, true",
    "quebec,     1996-05-30, false",
    "quebec,     1996-05-31, true",
  })
  void a_manual_adjuster_goes_where_the_vehicle_must_have_an_automatic_one(
      String ruleSet, LocalDate built, boolean replaced) {
    SoundBrake brake =
        SoundBrake.tube()
            .ruleSet(ruleSet)
            .builtOn(Optional.of(built))
            .layout("adjuster", AdjusterKind.MANUAL);
    assertThat(rules(brake.decision("slack-adjuster")).contains("SLACK-ADJUSTER-010"))
        .isEqualTo(replaced);
  }

  @Test
  void the_day_of_building_is_asked_for_where_a_manual_adjuster_hangs_on_it() {
    Decision adjuster =
        SoundBrake.tube()
            .builtOn(Optional.empty())
            .layout("adjuster", AdjusterKind.MANUAL)
            .decision("slack-adjuster");
    assertThat(adjuster.disposition()).isEqualTo(Disposition.UNDECIDED);
    assertThat(adjuster.needed()).anyMatch(one -> one.point().endsWith(".vehicle.built-on"));
  }

  private static SoundBrake arm(SoundBrake brake, String adjuster, String length) {
    return brake.measured(adjuster, "armLength", length, Station.WHOLE_PART, Method.STEEL_RULE);
  }

  private static List<Evidence.AlsoReplaced> causes(Decision decision) {
    return decision.reasons().stream()
        .flatMap(reason -> reason.evidence().stream())
        .filter(Evidence.AlsoReplaced.class::isInstance)
        .map(Evidence.AlsoReplaced.class::cast)
        .toList();
  }

  private static List<String> rules(Decision decision) {
    return decision.reasons().stream().map(Reason::rule).toList();
  }

  /** The rules that speak of a difference between the two ends. */
  private static List<String> unlike(Decision decision) {
    return decision.reasons().stream()
        .filter(
            reason -> reason.evidence().stream().anyMatch(Evidence.UnlikePartner.class::isInstance))
        .map(Reason::rule)
        .toList();
  }
}
