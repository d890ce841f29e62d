package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.SIGN_RULE;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rules that say what another one says, or against it. */
class RulesTogetherTest {

  private static final String SAME =
      "19:6 [same-rule] the rule says what CAMSHAFT-010 says in"
          + " org/brakerules/rules/camshaft/camshaft.drl line 10, and its reader gets two reasons"
          + " for one -> take one of them out, and put the sources of both into the other";

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws IOException {
    rules = new SmallRuleBase(folder);
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          $part : Camshaft( crack == Sign.SEEN ) ~ $part : Camshaft( crack == Sign.SEEN )
          $part : Camshaft( crack == Sign.SEEN ) ~ $part : Camshaft( crack == Sign.SEEN, $unused : station )
          $part : Camshaft( crack == Sign.SEEN, condition == Condition.NEW ) ~ $part : Camshaft( condition == Condition.NEW, crack == Sign.SEEN )
          $part : Camshaft( crack == Sign.SEEN || flat == Sign.SEEN ) ~ $part : Camshaft( flat == Sign.SEEN || crack == Sign.SEEN )
          Drum( soaked == Sign.SEEN, $wheelEnd : wheelEnd ) $part : Camshaft( wheelEnd == $wheelEnd ) ~ $drum : Drum( $wheelEnd : wheelEnd, soaked == Sign.SEEN ) $part : Camshaft( wheelEnd == $wheelEnd )
          """)
  void rules_of_the_same_conditions_and_verdict_are_told(String first, String second)
      throws IOException {
    assertThat(rules.problemsOf(rule("010", first) + rule("020", second))).containsExactly(SAME);
  }

  @ParameterizedTest(name = "{0} and {1}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          $part : Camshaft( crack == Sign.SEEN ) ~ $part : Camshaft( flat == Sign.SEEN )
          $part : Camshaft( crack == Sign.SEEN ) ~ $part : Camshaft( crack == Sign.SEEN, condition == Condition.NEW )
          Brake( $wheelEnd : wheelEnd, $partner : partner ) $part : Camshaft( wheelEnd == $wheelEnd ) ~ Brake( $wheelEnd : wheelEnd, $partner : partner ) $part : Camshaft( wheelEnd == $partner )
          """)
  void rules_of_other_conditions_are_sound(String first, String second) throws IOException {
    assertThat(rules.problemsOf(rule("010", first) + rule("020", second))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"adjust", "clean"})
  void a_milder_verdict_on_the_same_conditions_is_told(String milder) throws IOException {
    String second = rule("020", "$part : Camshaft( crack == Sign.SEEN )");
    assertThat(rules.problemsOf(SIGN_RULE + second.replace("verdict.replace", "verdict." + milder)))
        .containsExactly(
            "19:6 [conflict] CAMSHAFT-010 in org/brakerules/rules/camshaft/camshaft.drl line 10 says"
                + " replace on the same conditions; the worst verdict wins, and this "
                + milder
                + " never counts -> take CAMSHAFT-020 out, the milder one, unless a condition is to"
                + " tell the two apart");
  }

  @Test
  void a_hold_or_a_look_beside_a_verdict_is_sound() throws IOException {
    String second = rule("020", "$part : Camshaft( crack == Sign.SEEN )");
    String look = "verdict.lookAt( $part, \"camshaft.turns-freely\" )";
    assertThat(
            rules.problemsOf(
                SIGN_RULE
                    + second.replace("verdict.replace", "verdict.hold")
                    + second
                        .replace("CAMSHAFT-020", "CAMSHAFT-030")
                        .replace("verdict.replace( $part )", look)))
        .isEmpty();
  }

  private static String rule(String number, String conditions) {
    return SIGN_RULE
        .replace("CAMSHAFT-010", "CAMSHAFT-" + number)
        .replace("$part : Camshaft( crack == Sign.SEEN )", conditions);
  }
}
