package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.LIMIT_RULE;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Patterns of one wheel end. */
class WheelEndTest {

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws Exception {
    rules = new SmallRuleBase(folder);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
            wheelEnd == $wheelEnd ~ condition == Condition.NEW ~ 16:11 [not-joined] Camshaft may be of another wheel end -> write ", wheelEnd == $wheelEnd" before its closing bracket
            wheelEnd == $wheelEnd ~ (nothing) ~ 16:11 [not-joined] Camshaft may be of another wheel end -> write "wheelEnd == $wheelEnd" in its brackets
            wheelEnd == $wheelEnd ~ $wheelEnd : wheelEnd ~ 16:11 [not-joined] Camshaft may be of another wheel end -> write "wheelEnd == $wheelEnd" in place of "$wheelEnd : wheelEnd"
            wheelEnd == $wheelEnd ~ wheelEnd != $wheelEnd ~ 16:11 [not-joined] Camshaft may be of another wheel end -> write "wheelEnd == $wheelEnd" in place of "wheelEnd != $wheelEnd"
          """)
  void patterns_that_are_not_joined_are_told(String written, String instead, String problem)
      throws Exception {
    assertThat(rules.with(LIMIT_RULE, written, instead)).containsExactly(problem);
  }

  @Test
  void patterns_without_any_wheel_end_are_told() throws Exception {
    assertThat(rules.with(LIMIT_RULE, ", $wheelEnd : wheelEnd", "(nothing)"))
        .containsExactly(
            "15:3 [not-joined] the patterns are not joined by their wheel end"
                + " -> write \", $wheelEnd : wheelEnd\" before its closing bracket",
            "16:33 [unknown-variable] $wheelEnd is not named by any pattern before"
                + " -> name it in a pattern before: $wheelEnd : property");
  }

  @Test
  void a_pattern_under_not_is_joined_as_well() throws Exception {
    assertThat(
            rules.with(
                SIGN_RULE,
                "crack == Sign.SEEN )",
                "crack == Sign.SEEN, $wheelEnd : wheelEnd )\n  not Drum( )"))
        .containsExactly(
            "16:7 [not-joined] Drum may be of another wheel end"
                + " -> write \"wheelEnd == $wheelEnd\" in its brackets");
  }

  @Test
  void each_pattern_of_a_rule_without_any_wheel_end_is_told_its_part() throws Exception {
    assertThat(rules.with(SIGN_RULE, "$part :", "not Drum( )\\n  Brake( )\\n  $part :"))
        .containsExactly(
            "15:7 [not-joined] Drum may be of another wheel end"
                + " -> write \"wheelEnd == $wheelEnd\" in its brackets",
            "16:3 [not-joined] the patterns are not joined by their wheel end"
                + " -> write \"$wheelEnd : wheelEnd\" in its brackets",
            "17:11 [not-joined] Camshaft may be of another wheel end"
                + " -> write \", wheelEnd == $wheelEnd\" before its closing bracket");
  }

  @Test
  void patterns_of_the_partner_alone_are_joined_by_it() throws Exception {
    assertThat(
            rules.problemsOf(
                LIMIT_RULE
                    .replace("$wheelEnd : wheelEnd", "$partner : partner")
                    .replace("wheelEnd == $wheelEnd", "condition == Condition.NEW")))
        .containsExactly(
            "16:11 [not-joined] Camshaft may be of another wheel end"
                + " -> write \", wheelEnd == $partner\" before its closing bracket");
  }

  @Test
  void a_rule_may_speak_of_the_wheel_end_across_the_axle() throws Exception {
    assertThat(
            rules.with(
                LIMIT_RULE, "$wheelEnd : wheelEnd", "$partner : partner, $wheelEnd : wheelEnd"))
        .isEmpty();
    assertThat(
            rules.problemsOf(
                LIMIT_RULE
                    .replace("$wheelEnd : wheelEnd", "$partner : partner")
                    .replace("wheelEnd == $wheelEnd", "wheelEnd == $partner")))
        .isEmpty();
  }

  @Test
  void the_partner_of_another_pattern_joins_nothing() throws Exception {
    assertThat(rules.with(LIMIT_RULE, "wheelEnd == $wheelEnd", "wheelEnd == $partner"))
        .contains(
            "16:11 [not-joined] Camshaft may be of another wheel end"
                + " -> write \"wheelEnd == $wheelEnd\" in place of \"wheelEnd == $partner\"");
  }
}
