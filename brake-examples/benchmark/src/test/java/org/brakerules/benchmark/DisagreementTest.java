package org.brakerules.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.brakerules.benchmark.oracle.OracleCheck;
import org.brakerules.benchmark.oracle.OracleDecision;
import org.brakerules.benchmark.oracle.OracleReason;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.junit.jupiter.api.Test;

class DisagreementTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final Place DRUM = LEFT.place(PartKind.DRUM);
  private static final BrakeJob JOB =
      BrakeJob.builder()
          .date(LocalDate.of(2026, 11, 20))
          .ruleSet("us-federal")
          .scope(Scope.DRUM_OFF)
          .wheelEnd(LEFT, Layout.UNKNOWN)
          .build();

  private static final OracleReason TURN = new OracleReason("DRUM-030", Verdict.ADJUST);
  private static final OracleReason OPEN = new OracleReason("GENERAL-020", Verdict.UNDECIDED);

  @Test
  void names_the_part_and_what_only_one_of_both_says() {
    assertThat(kind(decision(List.of(TURN, OPEN), List.of()), decision(List.of(TURN), List.of())))
        .startsWith("drum: rules ")
        .contains("GENERAL-020")
        .doesNotContain("DRUM-030");
  }

  @Test
  void names_a_point_that_only_the_oracle_leaves_open() {
    assertThat(
            kind(
                decision(List.of(OPEN), List.of()), decision(List.of(OPEN), List.of("drum.taper"))))
        .isEqualTo("drum: oracle drum.taper");
  }

  @Test
  void tells_reasons_in_another_order() {
    assertThat(
            kind(
                decision(List.of(TURN, OPEN), List.of()), decision(List.of(OPEN, TURN), List.of())))
        .isEqualTo("drum: order of the reasons");
  }

  @Test
  void tells_a_check_of_another_margin() {
    assertThat(kind(checked(Length.parse("0.001 in")), checked(Length.parse("0.002 in"))))
        .isEqualTo("drum: drum.taper.max in its figures");
  }

  @Test
  void tells_a_part_that_one_of_both_leaves_out() {
    assertThat(
            new Disagreement(
                    JOB, DRUM, Optional.empty(), Optional.of(decision(List.of(), List.of())))
                .kind())
        .isEqualTo("drum: only the oracle has it");
  }

  private static String kind(OracleDecision rules, OracleDecision oracle) {
    return new Disagreement(JOB, DRUM, Optional.of(rules), Optional.of(oracle)).kind();
  }

  private static OracleDecision decision(List<OracleReason> reasons, List<String> open) {
    return new OracleDecision(Disposition.UNDECIDED, false, reasons, List.of(), open);
  }

  private static OracleDecision checked(Length margin) {
    return new OracleDecision(
        Disposition.REUSE,
        false,
        List.of(),
        List.of(
            new OracleCheck(
                "drum.taper.max",
                CheckStatus.WITHIN,
                Optional.of(Comparison.AT_MOST),
                Optional.of(Length.parse("0.010 in")),
                Optional.empty(),
                Optional.of(margin))),
        List.of());
  }
}
