package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.WorkPlanSteps.ids;
import static org.brakerules.WorkPlanSteps.plan;
import static org.brakerules.WorkPlanSteps.step;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.Row;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.LipDirection;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Sign;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;
import org.brakerules.work.WorkPlan;
import org.junit.jupiter.api.Test;

/** A hold says how it ends. */
class WayOutTest {

  @Test
  void a_soaked_lining_is_led_back_to_the_seal_that_was_found_the_wrong_way_round() {
    List<String> out =
        plan(SoundBrake.tube()
                .with("lining/upper", "greaseSoaked", Sign.SEEN)
                .with("camshaft-seal/head-end", "lip", LipDirection.TOWARD_HEAD))
            .stops()
            .get(0)
            .wayOut();
    assertThat(out)
        .first()
        .asString()
        .startsWith("may be the source, camshaft seal, head end: The head seal has its open side")
        .endsWith("(CAMSHAFT-SEAL-060)");
    assertThat(out)
        .last()
        .asString()
        .startsWith("put right what the hold names")
        .contains("Of a new part it is enough that it lies ready");
  }

  @Test
  void a_cut_seal_at_the_adjuster_lets_grease_out_where_no_drum_is() {
    assertThat(
            plan(SoundBrake.tube()
                    .with("lining/upper", "greaseSoaked", Sign.SEEN)
                    .with("camshaft-seal/spline-end", "cut", Sign.SEEN))
                .stops()
                .get(0)
                .wayOut())
        .noneMatch(line -> line.startsWith("may be the source"));
  }

  @Test
  void without_a_finding_it_says_where_to_look_for_the_source() {
    assertThat(
            plan(SoundBrake.tube().withHub().with("lining/upper", "oilSoaked", Sign.SEEN))
                .stops()
                .get(0)
                .wayOut())
        .anyMatch(line -> line.startsWith("look for the source: "))
        .noneMatch(line -> line.startsWith("may be the source"));
  }

  @Test
  void thick_grease_leads_to_the_fitting_first_and_not_to_the_hub() {
    List<String> out =
        plan(SoundBrake.tube().withHub().with("lining/upper", "greaseSoaked", Sign.SEEN))
            .stops()
            .get(0)
            .wayOut();
    assertThat(out)
        .filteredOn(line -> line.startsWith("look for the source: "))
        .singleElement()
        .asString()
        .startsWith("look for the source: grease fitting")
        .doesNotContain("hub", "wheel seal");
  }

  @Test
  void a_cam_that_stands_near_its_nose_goes_on_with_the_drum_off_and_no_adjuster_turned() {
    List<String> out =
        plan(SoundBrake.tube()
                .ruleSet("quebec")
                .measured("camshaft", "rotation", "126 deg", Station.WHOLE_PART, Method.PROTRACTOR))
            .stops()
            .get(0)
            .wayOut();
    assertThat(out)
        .first()
        .asString()
        .startsWith("First write down stroke and cam angle as read before.")
        .contains(
            "never tighten it",
            "both linings and the bore",
            "the mark of the shaft",
            "scope drum-off");
  }

  /** A unit that may let go is off the vehicle before anything else is done at it. */
  @Test
  void a_new_spring_brake_that_only_lies_ready_ends_no_hold_on_the_old_one() {
    assertThat(
            plan(SoundBrake.tube().with("spring-brake", "boltWillNotSeat", Sign.SEEN))
                .stops()
                .get(0)
                .wayOut())
        .last()
        .asString()
        .startsWith("put right what the hold names")
        .doesNotContain("lies ready");
  }

  /** No step of its plan fits a chamber, or a wheel seal of a hub that is on. */
  @Test
  void a_new_part_that_no_step_would_put_in_is_put_in_first() {
    assertThat(
            plan(SoundBrake.tube().withHub().with("lining/upper", "oilSoaked", Sign.SEEN))
                .stops()
                .get(0)
                .wayOut())
        .last()
        .asString()
        .doesNotContain("lies ready");
    assertThat(
            plan(SoundBrake.tube()
                    .fittedNew("chamber")
                    .with("chamber", "sizeUnlikePartner", Sign.SEEN))
                .stops())
        .allSatisfy(stop -> assertThat(stop.wayOut()).noneMatch(one -> one.contains("lies ready")));
  }

  @Test
  void a_stop_for_the_cam_leads_to_a_plan_that_takes_the_drum_off_with_its_cautions() {
    WorkPlan plan =
        plan(
            SoundBrake.tube()
                .scope(Scope.DRUM_OFF)
                .ruleSet("quebec")
                .measured(
                    "camshaft", "rotation", "126 deg", Station.WHOLE_PART, Method.PROTRACTOR));
    assertThat(plan.stops()).hasSize(1);
    assertThat(ids(plan)).containsSubsequence("SECURE-010", "TEARDOWN-060", "TEARDOWN-100");
    assertThat(step(plan, "TEARDOWN-060").cautions())
        .extracting(Caution::id)
        .contains("brake-dust", "heavy-drum");
  }

  @Test
  void a_hold_with_no_source_names_none() {
    assertThat(
            plan(SoundBrake.tube().with("drum", "outsideCrack", Sign.SEEN)).stops().get(0).wayOut())
        .singleElement()
        .asString()
        .startsWith("put right");
  }

  @Test
  void every_way_out_is_that_of_a_rule_that_holds() {
    Set<String> holds =
        BrakeRules.standard().rules().stream()
            .filter(rule -> rule.verdict() == Verdict.HOLD)
            .map(Rule::id)
            .collect(Collectors.toSet());
    List<Row> rows = CsvTable.ofResource("/org/brakerules/work/ways-out.csv");
    assertThat(rows).extracting(row -> row.text("hold")).isNotEmpty().isSubsetOf(holds);
  }

  @Test
  void every_row_names_rules_that_are_there_and_its_hold_holds() {
    Set<String> rules =
        BrakeRules.standard().rules().stream().map(Rule::id).collect(Collectors.toSet());
    Set<String> holds =
        BrakeRules.standard().rules().stream()
            .filter(rule -> rule.verdict() == Verdict.HOLD)
            .map(Rule::id)
            .collect(Collectors.toSet());
    List<Row> rows = CsvTable.ofResource("/org/brakerules/work/hold-sources.csv");
    assertThat(rows).isNotEmpty();
    assertThat(rows).extracting(row -> row.text("hold")).isSubsetOf(holds);
    assertThat(rows).extracting(row -> row.text("found")).isSubsetOf(rules);
  }
}
