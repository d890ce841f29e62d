package org.brakerules.harness.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.coverage.ConditionCoverage;
import org.junit.jupiter.api.Test;

/** A condition is never said to fail in a case in which it holds without a word of that. */
class CoverageReportTest {

  private static final List<CaseName> CRACKED = List.of(new CaseName("drum", "A cracked drum"));
  private static final List<CaseName> SOUND =
      List.of(new CaseName("drum", "A sound drum"), new CaseName("drum", "A new drum"));

  @Test
  void a_case_in_which_it_only_fails_is_the_example() {
    assertThat(CoverageReport.failsIn(condition(SOUND, CRACKED)))
        .isEqualTo("2 cases, such as \"A sound drum\" (drum)");
  }

  @Test
  void where_it_also_holds_in_every_case_this_is_said() {
    assertThat(CoverageReport.failsIn(condition(List.of(), CRACKED)))
        .isEqualTo(
            "1 case, \"A cracked drum\" (drum), for one part; for another, as at the other end of"
                + " the axle, it holds");
  }

  @Test
  void where_it_never_fails_no_case_is_named() {
    assertThat(CoverageReport.failsIn(condition(List.of(), List.of()))).isEqualTo("no case");
  }

  private static ConditionCoverage condition(List<CaseName> fails, List<CaseName> failsBeside) {
    return new ConditionCoverage("id", "text", CRACKED, fails, failsBeside);
  }
}
