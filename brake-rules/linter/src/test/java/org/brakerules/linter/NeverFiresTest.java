package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Conditions that nothing can ever meet. */
class NeverFiresTest {

  private static final String PATTERN = "$part : Camshaft( crack == Sign.SEEN )";

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws IOException {
    rules = new SmallRuleBase(folder);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          turnsFreely == Sign.SEEN, turnsFreely == Sign.NOT_SEEN ~ 15:47 [contradiction] turnsFreely == Sign.SEEN and turnsFreely == Sign.NOT_SEEN are never true at once, so the pattern matches nothing -> take one of them out, or join them by || if either will do
          condition == Condition.NEW, condition == Condition.AS_FOUND ~ 15:49 [contradiction] condition == Condition.NEW and condition == Condition.AS_FOUND are never true at once, so the pattern matches nothing -> take one of them out, or join them by || if either will do
          condition == Condition.NEW, condition != Condition.NEW ~ 15:49 [contradiction] condition == Condition.NEW and condition != Condition.NEW are never true at once, so the pattern matches nothing -> take one of them out, or join them by || if either will do
          """)
  void conditions_that_are_never_true_at_once_are_told(String conditions, String problem)
      throws IOException {
    assertThat(rules.with(SIGN_RULE, "crack == Sign.SEEN", conditions)).containsExactly(problem);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "condition == Condition.NEW || condition == Condition.AS_FOUND, condition != Condition.NEW",
        "crack == Sign.SEEN || flat == Sign.SEEN, condition == Condition.NEW",
        "presence != Presence.MISSING, presence != Presence.NOT_FITTED"
      })
  void conditions_that_can_be_true_at_once_are_sound(String conditions) throws IOException {
    assertThat(rules.with(SIGN_RULE, "crack == Sign.SEEN", conditions)).isEmpty();
  }

  @Test
  void two_limits_in_one_pattern_are_told() throws IOException {
    assertThat(
            rules.with(
                LIMIT_RULE, "$wheelEnd : wheelEnd )", "limit == \"x\", $wheelEnd : wheelEnd )"))
        .contains(
            "15:50 [contradiction] limit == \"camshaft.end-play.max\" and limit == \"x\" are never"
                + " true at once, so the pattern matches nothing -> take one of them out, or join"
                + " them by || if either will do");
  }

  @Test
  void a_replacement_that_no_rule_asks_for_is_told() throws IOException {
    Path rest = folder.resolve("org/brakerules/rules/rest/rest.drl");
    rules.write("rest/rest.drl", Files.readString(rest).replace("verdict.replace", "verdict.hold"));
    assertThat(
            rules.with(
                SIGN_RULE,
                PATTERN,
                "Replaced( partKind == PartKind.DRUM, $wheelEnd : wheelEnd )\\n"
                    + "  $part : Camshaft( wheelEnd == $wheelEnd )"))
        .containsExactly(
            "15:25 [never-replaced] no rule replaces a PartKind.DRUM, so this rule never fires"
                + " -> write the rule that replaces it first, or name a part that is replaced");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          $part : CamRoller( flat == Sign.SEEN, station == Station.HEAD_END ) ~ 15:52 [never-there] CamRoller is never at Station.HEAD_END, so the pattern matches nothing -> write one of "Station.LOWER", "Station.UPPER"
          CamshaftBushing( rough == Sign.SEEN, $station : station, $wheelEnd : wheelEnd )\\n  $part : CamRoller( wheelEnd == $wheelEnd, station == $station ) ~ 16:56 [never-there] $station is head end or spline end and CamRoller is upper or lower, so the two never meet -> leave the station out, or name parts at the same stations
          CamRoller( flat == Sign.SEEN, station == Station.UPPER, $station : station, $wheelEnd : wheelEnd )\\n  $part : Shoe( wheelEnd == $wheelEnd, station == Station.LOWER, station == $station ) ~ 16:77 [never-there] $station is upper and Shoe is lower, so the two never meet -> leave the station out, or name parts at the same stations
          BeyondLimit( limit == "camshaft.end-play.max", $station : station, $wheelEnd : wheelEnd )\\n  $part : CamRoller( wheelEnd == $wheelEnd, station == $station ) ~ 16:56 [never-there] $station is whole part and CamRoller is upper or lower, so the two never meet -> leave the station out, or name parts at the same stations
          BeyondLimit( limit == "camshaft.end-play.max", partKind == PartKind.DRUM, $wheelEnd : wheelEnd )\\n  $part : Camshaft( wheelEnd == $wheelEnd ) ~ 15:62 [limit-of-another-part] the limit is of the camshaft, so a reading beyond it is never of a PartKind.DRUM -> write PartKind.CAMSHAFT, or leave partKind out
          """)
  void parts_that_never_meet_are_told(String conditions, String problem) throws IOException {
    assertThat(rules.with(SIGN_RULE, PATTERN, conditions)).containsExactly(problem);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "CamRoller( flat == Sign.SEEN, $station : station, $wheelEnd : wheelEnd )\\n"
            + "  $part : Shoe( wheelEnd == $wheelEnd, station == $station )",
        "Disturbed( $station : station, $wheelEnd : wheelEnd )\\n"
            + "  $part : Shoe( wheelEnd == $wheelEnd, station == $station )"
      })
  void parts_that_can_meet_are_sound(String conditions) throws IOException {
    assertThat(rules.with(SIGN_RULE, PATTERN, conditions)).isEmpty();
  }
}
