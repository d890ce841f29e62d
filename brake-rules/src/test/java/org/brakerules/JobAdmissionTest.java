package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.random.Records;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A job that names what the rule base cannot use is refused, never half used. */
class JobAdmissionTest {

  private static final String PLAY = "camshaft-bushing.radial-play.max";

  private final BrakeRules rules = BrakeRules.standard();
  private final BrakeJob sound = JobReader.read(Tables.open("sound-wheel-end.json").orElseThrow());

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "axle2/left",
        "axle2/left/camshaft-bushing",
        "axle2/left/camshaft-bushing/head-end"
      })
  void a_makers_limit_on_its_part_its_wheel_end_or_the_whole_job_is_taken(String on) {
    assertThatCode(() -> rules.decide(with(makers(PLAY, on, "0.015 in"))))
        .doesNotThrowAnyException();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          camshaft-bushing.radial-pley.max | axle2/left           | 0.015 in | did you mean "camshaft-bushing.radial-play.max"?
          camshaft-bushing.radial-play.max | axle2/left           | 15 deg   | write it in the unit of a value such as
          camshaft-bushing.radial-play.max | axle2/right          | 0.015 in | no part of the job is there
          camshaft-bushing.radial-play.max | axle2/left/camshaft  | 0.015 in | no camshaft bushing is there
          camshaft-bushing.radial-play.max | axle2/left/drum      | 0.015 in | no camshaft bushing is there
          """)
  void a_makers_limit_that_could_never_hold_is_refused(
      String limit, String on, String value, String message) {
    assertThat(problems(with(makers(limit, on, value))))
        .hasSize(1)
        .allSatisfy(problem -> assertThat(problem).contains(message));
  }

  /** Otherwise the order of the list would decide between 0.015 in and 0.025 in. */
  @Test
  void two_makers_limits_for_one_path_are_refused() {
    BrakeJob job = with(makers(PLAY, "", "0.015 in"), makers(PLAY, "", "0.025 in"));
    assertThat(problems(job))
        .containsExactly(
            "The maker's limit for " + PLAY + " is on \"\" twice; keep the one that holds.");
  }

  @Test
  void two_makers_limits_for_a_path_and_one_below_it_are_taken() {
    assertThatCode(
            () ->
                rules.decide(
                    with(makers(PLAY, "", "0.015 in"), makers(PLAY, "axle2/left", "0.025 in"))))
        .doesNotThrowAnyException();
  }

  @Test
  void an_unknown_rule_set_is_refused_with_the_nearest_known_one() {
    BrakeJob job = Records.with(sound, "ruleSet", new RuleSet("quebeck"));
    assertThat(problems(job))
        .containsExactly("\"quebeck\" is no rule set of this rule base; did you mean \"quebec\"?");
  }

  @Test
  void all_problems_are_told_at_once() {
    BrakeJob job =
        Records.with(
            with(makers("no.such", "", "1 in"), makers(PLAY, "axle9/left", "1 deg")),
            "ruleSet",
            new RuleSet("quebeck"));
    assertThat(problems(job)).hasSize(4);
  }

  private List<String> problems(BrakeJob job) {
    JobRefusedException refused =
        catchThrowableOfType(JobRefusedException.class, () -> rules.decide(job));
    assertThat(refused).as("the job is refused").isNotNull();
    return refused.problems();
  }

  private BrakeJob with(MakersLimit... limits) {
    return Records.with(sound, "makersLimits", List.of(limits));
  }

  private static MakersLimit makers(String limit, String on, String value) {
    return new MakersLimit(limit, on, Quantities.parse(value), "invented manual", "");
  }
}
