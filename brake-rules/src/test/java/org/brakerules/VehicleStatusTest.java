package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;
import org.brakerules.vehicle.AxleMatch;
import org.brakerules.vehicle.AxleMatch.Likeness;
import org.brakerules.vehicle.AxleStatus;
import org.brakerules.vehicle.BrakeCount;
import org.brakerules.vehicle.BrakeCount.Stroke;
import org.brakerules.vehicle.CriterionStatus;
import org.brakerules.vehicle.CriterionStatus.Answer;
import org.brakerules.vehicle.VehicleStatus;
import org.brakerules.vehicle.VehicleStatusWriter;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an axle and a vehicle come to. */
class VehicleStatusTest {

  private static final String SHARE = "defective-brakes";
  private static final String STEER = "quebec.steer-axle";

  @Test
  void an_axle_alike_at_both_ends_with_short_strokes_reaches_nothing() {
    VehicleStatus status = status(SoundBrake.tube().withPartner());
    assertThat(match(status, AxleMatter.CHAMBER_SIZE).likeness()).isEqualTo(Likeness.ALIKE);
    assertThat(status.brakes())
        .extracting(BrakeCount::stroke)
        .containsExactly(Stroke.WITHIN, Stroke.WITHIN);
    assertThat(criterion(status, SHARE).answer()).isEqualTo(Answer.NOT_REACHED);
    assertThat(status.axles().get(0).strokesApart()).contains(Length.parse("0 in"));
  }

  @Test
  void free_strokes_alike_and_applied_ones_not_send_to_what_gives_way_under_load() {
    AxleStatus axle =
        status(SoundBrake.tube().withPartner().stroke("1 15/16 in", "85 psi")).axles().get(0);
    assertThat(axle.leftFree()).isPresent().isEqualTo(axle.rightFree());
    assertThat(axle.givesWay().orElseThrow())
        .isEqualTo(
            "From free to applied stroke the rod of axle2/left goes "
                + axle.strokesApart().orElseThrow()
                + " further than the other. Look at bushings, spline, bracket and drum there. From"
                + " which difference on to act is the maker's figure.");
    assertThat(status(SoundBrake.tube().withPartner()).axles().get(0).givesWay()).isEmpty();
    assertThat(status(SoundBrake.tube()).axles().get(0).givesWay()).isEmpty();
  }

  @Test
  void an_applied_stroke_that_is_longer_by_its_free_stroke_gives_no_way() {
    AxleStatus axle =
        new AxleStatus(
            WheelEndPath.of(2, Side.LEFT),
            AxleKind.DRIVE,
            List.of(),
            Optional.of(Length.parse("1.5 in")),
            Optional.of(Length.parse("1.625 in")),
            Optional.of(Length.parse("0.5 in")),
            Optional.of(Length.parse("0.625 in")));
    assertThat(axle.givesWay()).isEmpty();
    assertThat(axle.strokesApart()).contains(Length.parse("0.125 in"));
  }

  @Test
  void the_end_that_is_not_in_the_job_is_a_brake_of_which_nothing_is_known() {
    VehicleStatus status = status(SoundBrake.tube());
    assertThat(status.brakes())
        .extracting(brake -> brake.wheelEnd() + " " + brake.stroke())
        .containsExactly("axle2/left WITHIN", "axle2/right OPEN");
    assertThat(match(status, AxleMatter.ADJUSTER_KIND))
        .isEqualTo(
            new AxleMatch(AxleMatter.ADJUSTER_KIND, Likeness.NOT_STATED, "automatic-clutch", ""));
    assertThat(criterion(status, SHARE).answer()).isEqualTo(Answer.OPEN);
    assertThat(criterion(status, SHARE).open())
        .contains("the applied stroke of axle2/right, read as its limit wants it");
  }

  @Test
  void ends_that_differ_are_said_with_what_each_is() {
    VehicleStatus status =
        status(
            SoundBrake.tube().withPartner().layoutAcross("adjuster", AdjusterKind.AUTOMATIC_PAWL));
    assertThat(match(status, AxleMatter.ADJUSTER_KIND))
        .isEqualTo(
            new AxleMatch(
                AxleMatter.ADJUSTER_KIND, Likeness.UNLIKE, "automatic-clutch", "automatic-pawl"));
  }

  /** Limit 2 in, 49 CFR 393.47(e)(1), clamp 30 standard: verified in the section text. */
  @ParameterizedTest(name = "{0} of a type 30: {1} beyond {2}")
  @CsvSource({"2 in,     WITHIN, ''", "2.001 in, BEYOND, 0.001 in", "2 1/4 in, BEYOND, 0.25 in"})
  void a_stroke_counts_by_how_far_it_is_beyond_its_limit(
      String stroke, Stroke standing, String beyond) {
    BrakeCount left =
        status(SoundBrake.tube().withPartner().stroke(stroke, "85 psi")).brakes().get(0);
    assertThat(left.stroke()).isEqualTo(standing);
    assertThat(left.beyond())
        .isEqualTo(beyond.isEmpty() ? Optional.empty() : Optional.of(Length.parse(beyond)));
    assertThat(left.otherwise()).isEmpty();
  }

  @Test
  void a_stroke_at_another_pressure_than_the_rule_sets_is_open() {
    VehicleStatus status = status(SoundBrake.tube().withPartner().stroke("1.5 in", "100 psi"));
    assertThat(status.brakes().get(0).stroke()).isEqualTo(Stroke.OPEN);
  }

  @Test
  @DisplayName("A broken return spring fails 49 CFR 396 App A 1.a(2), verified")
  void a_defect_that_fails_the_law_may_make_the_brake_defective_and_is_named() {
    VehicleStatus status =
        status(SoundBrake.tube().withPartner().with("return-spring", "broken", Sign.SEEN));
    assertThat(status.brakes().get(0).otherwise()).containsExactly("axle2/left/return-spring");
    assertThat(criterion(status, SHARE).answer()).isEqualTo(Answer.OPEN);
  }

  @ParameterizedTest(name = "across the axle {0} {1}: {2}")
  @DisplayName("Steering axle with unlike chambers: Quebec, r. 32, s. 166(8), read in the law")
  @CsvSource({"30, 5.5 in, NOT_REACHED", "24, 5.5 in, REACHED", "30, 6 in, REACHED"})
  void in_quebec_unlike_ends_of_a_steering_axle_are_a_major_defect(
      String type, String arm, Answer answer) {
    SoundBrake axle =
        SoundBrake.tube()
            .withPartner()
            .axleKind(AxleKind.STEER)
            .ruleSet("quebec")
            .layoutAcross("chamber", chamber(type));
    axle = arm(arm(axle, "slack-adjuster", "5.5 in"), "right/slack-adjuster", arm);
    assertThat(criterion(status(axle), STEER).answer()).isEqualTo(answer);
  }

  @Test
  void a_criterion_of_quebec_is_not_named_under_the_federal_rules() {
    assertThat(status(SoundBrake.tube().withPartner()).criteria())
        .extracting(CriterionStatus::id)
        .containsExactly(SHARE);
  }

  @Test
  void json_says_what_the_criterion_says_and_whom_to_ask() throws IOException {
    VehicleStatus status = status(SoundBrake.tube().withPartner().stroke("2 1/8 in", "85 psi"));
    JsonNode json = new ObjectMapper().readTree(VehicleStatusWriter.write(status));
    assertThat(json.at("/brakes/0/beyond").asText()).isEqualTo("0.125 in");
    assertThat(json.at("/axles/0/strokesApart").asText())
        .isEqualTo(status.axles().get(0).strokesApart().orElseThrow().toString());
    assertThat(json.at("/criteria/0/says").asText()).contains("20 % or more");
    assertThat(json.at("/criteria/0/ask").asText()).startsWith("Ask ");
    assertThat(json.at("/criteria/0/answer").asText()).isEqualTo("not-reached");
  }

  private static ChamberSize chamber(String type) {
    return new ChamberSize(
        ChamberFamily.CLAMP, type, StrokeClass.STANDARD, Optional.of(Length.parse("2.5 in")), "30");
  }

  private static SoundBrake arm(SoundBrake brake, String adjuster, String length) {
    return brake.measured(adjuster, "armLength", length, Station.WHOLE_PART, Method.STEEL_RULE);
  }

  private static VehicleStatus status(SoundBrake brake) {
    return BrakeRules.standard().vehicle(brake.job());
  }

  private static AxleMatch match(VehicleStatus status, AxleMatter matter) {
    return status.axles().get(0).matches().stream()
        .filter(one -> one.matter() == matter)
        .findFirst()
        .orElseThrow();
  }

  private static CriterionStatus criterion(VehicleStatus status, String id) {
    return status.criteria().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }
}
