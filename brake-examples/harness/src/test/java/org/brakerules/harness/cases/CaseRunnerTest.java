package org.brakerules.harness.cases;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.util.List;
import org.brakerules.BrakeRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** That a case which is wrong does not pass. */
class CaseRunnerTest {

  private static final String PLAY_OVER =
      """
      change:
        camshaft-bushing/spline-end:
          radialPlay: { value: 0.021 in, method: dial-indicator-lifted-by-hand }
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          fires: [CAMSHAFT-030]                       | expected CAMSHAFT-030 to fire, but
          fires: [CAMSHAFT-999]                       | there is no rule CAMSHAFT-999
          near: CAMSHAFT-BUSHING-010                  | expected CAMSHAFT-BUSHING-010 not to fire
          speaks: { CAMSHAFT-BUSHING-010: [camshaft-bushing/spline-end] } | expected CAMSHAFT-BUSHING-010 to speak of [camshaft-bushing/spline-end] and no others, got [camshaft-bushing/head-end, camshaft-bushing/spline-end]
          then: { camshaft-bushing/head-end: reuse }  | head-end: reuse, got replace, because: CAMSHAFT-BUSHING-010
          then: { camshaft-bushing/tube: reuse }      | expected an answer for camshaft-bushing/tube, got none
          holds: [camshaft]                           | expected camshaft on hold, got none
          needs: [camshaft.bent]                      | expected camshaft.bent to be needed, got [
          road: { camshaft-bushing/head-end: failed } | head-end: failed, got silent
          """)
  void wrong_expectation_is_not_met_and_says_why(String expectation, String mismatch)
      throws IOException {
    assertThat(run(PLAY_OVER + expectation))
        .anySatisfy(line -> assertThat(line).contains(mismatch));
  }

  @Test
  void near_miss_that_fails_for_another_reason_is_not_met() throws IOException {
    assertThat(run("near: CAMSHAFT-BUSHING-010\nfails: grease hole"))
        .singleElement()
        .asString()
        .startsWith("expected CAMSHAFT-BUSHING-010 not to fire because of \"grease hole\", got ");
  }

  @Test
  void right_expectation_is_met() throws IOException {
    assertThat(
            run(
                """
                job: { scope: wheel-on }
                change: { clevis-pin/large: { boltInstead: seen } }
                fires: [CLEVIS-PIN-020]
                speaks: { CLEVIS-PIN-020: [clevis-pin/large] }
                then: { clevis-pin/large: replace }
                also: { replace: [cotter-pin/large] }
                """))
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          then: { camshaft-bushing/head-end: replace } | nobody expects camshaft-bushing/spline-end: replace, on the sound axle it is reuse; name it under then or also, because: CAMSHAFT-BUSHING-010
          change: { camshaft: { crack: null } }        | nobody expects camshaft.crack to be needed; name it under needs
          change: { spring-brake: { dent: seen } } | nobody expects spring-brake on hold; name it under holds
          """)
  void what_happens_beside_a_case_and_is_not_named_is_not_met(String given, String mismatch)
      throws IOException {
    String change = given.startsWith("then") ? PLAY_OVER : "";
    assertThat(run(change + given)).anySatisfy(line -> assertThat(line).startsWith(mismatch));
  }

  @Test
  void other_end_of_the_axle_is_sound_unless_the_case_says_there_is_none() throws IOException {
    assertThat(run("then: { right/camshaft: reuse }")).isEmpty();
    assertThat(run("partner: none\nthen: { right/camshaft: reuse }"))
        .containsExactly("expected an answer for right/camshaft, got none");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          change: { camshaft: { crak: seen } }          | found an unknown field
          change: { camshaft: { crack: perhaps } }      | found "perhaps"
          change: { a/b/c: { crack: seen } }            | "a/b/c" is no part below a wheel end
          remove: [camshaft-seal/tube]                  | the sound wheel end has no camshaft-seal/tube
          job: { ruleSet: nowhere }                     | "nowhere" is no rule set of this rule base
          """)
  void case_that_makes_no_job_is_not_met_and_says_what_is_wrong(String change, String mismatch)
      throws IOException {
    assertThat(run(change)).anySatisfy(line -> assertThat(line).contains(mismatch));
  }

  @Test
  void change_of_null_takes_a_field_away() throws IOException {
    assertThat(
            run(
                """
                change: { camshaft: { crack: null } }
                then: { camshaft: undecided }
                needs: [camshaft.crack]
                """))
        .isEmpty();
  }

  @Test
  void near_miss_that_fires_is_told_once() throws IOException {
    assertThat(run(PLAY_OVER + "near: CAMSHAFT-BUSHING-010"))
        .containsExactly(
            "expected CAMSHAFT-BUSHING-010 not to fire, got Radial play at the spline end is"
                + " 0.021 in, limit at most 0.020 in.");
  }

  private static List<String> run(String yaml) throws IOException {
    RuleCase one =
        CaseFiles.read(
            "camshaft",
            new ObjectMapper(new YAMLFactory()).readTree(yaml),
            CaseFiles.ofThisArtifact().soundWheelEnd());
    return new CaseRunner(BrakeRules.standard()).run(one).mismatches();
  }
}
